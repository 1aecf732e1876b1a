package org.slugpeak.bridge.source;

import java.util.Locale;

/**
 * Where readings come from, as the user says it after {@code --from}. Immutable; any thread may use it.
 *
 * @param kind which way in it names
 * @param text the whole address as given
 */
public record SourceAddress(Kind kind, String text) {

    /** The ways in. */
    public enum Kind {
        /** {@code -}: standard input. */
        STANDARD_INPUT,
        /** {@code *.csv}: a file of readings. */
        CSV,
        /** {@code *.jsonl}: a session log. */
        SESSION_LOG,
        /** {@code *.wav}: recorded audio. */
        WAV,
        /** {@code sound} or {@code sound:NAME}: a sound input. */
        SOUND,
        /** {@code sim} or {@code sim:NAME}: the simulated receiver. */
        SIMULATION,
        /** Anything else: a serial port. */
        SERIAL
    }

    /**
     * Reads an address. Every text is one: what names nothing else is taken for a serial port.
     *
     * @param text as the user gave it; not empty
     * @return the address
     */
    public static SourceAddress parse(String text) {
        return new SourceAddress(kindOf(text.strip().toLowerCase(Locale.ROOT)), text.strip());
    }

    private static Kind kindOf(String lower) {
        if (lower.equals("-")) {
            return Kind.STANDARD_INPUT;
        }
        if (lower.equals("sim") || lower.startsWith("sim:")) {
            return Kind.SIMULATION;
        }
        if (lower.equals("sound") || lower.startsWith("sound:")) {
            return Kind.SOUND;
        }
        if (lower.endsWith(".csv")) {
            return Kind.CSV;
        }
        if (lower.endsWith(".jsonl")) {
            return Kind.SESSION_LOG;
        }
        return lower.endsWith(".wav") ? Kind.WAV : Kind.SERIAL;
    }

    /**
     * What follows the colon, as in {@code sound:NAME}.
     *
     * @return the name; empty where there is none
     */
    public String name() {
        int colon = text.indexOf(':');
        return colon < 0 ? "" : text.substring(colon + 1);
    }
}
