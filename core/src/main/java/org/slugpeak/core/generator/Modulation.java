package org.slugpeak.core.generator;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Amplitude modulation with one tone. Immutable; any thread may use it.
 *
 * @param toneHz the tone, Hz; 0 where there is none
 * @param depthPercent how deep, percent; 0 where there is none
 */
public record Modulation(double toneHz, double depthPercent) {

    /** A carrier alone. */
    public static final Modulation NONE = new Modulation(0, 0);

    /** That of receiver tests: 400 Hz, 30 % (IRE Standards on Radio Receivers, 1948, and IEC 60315-3, from memory). */
    public static final Modulation TEST_TONE = new Modulation(400, 30);

    /** The same as a plan writes it. */
    public static final String TEST_TONE_WORDS = "400 Hz, 30 %";

    private static final Set<String> WORDS_OF_NONE = Set.of("none", "cw", "off", "unmodulated");

    private static final Pattern TONE =
            Pattern.compile("(\\d+(?:\\.\\d+)?) *(k?)Hz *,? *(\\d+(?:\\.\\d+)?) *%", Pattern.CASE_INSENSITIVE);

    /**
     * Reads the words of a plan.
     *
     * @param words for example {@code none} or {@code 400 Hz, 30 %}
     * @return empty where they say something else, which a person has to set
     */
    public static Optional<Modulation> of(String words) {
        String plain = words.strip();
        if (WORDS_OF_NONE.contains(plain.toLowerCase(Locale.ROOT))) {
            return Optional.of(NONE);
        }
        Matcher tone = TONE.matcher(plain);
        if (!tone.matches()) {
            return Optional.empty();
        }
        double unitHz = tone.group(2).isEmpty() ? 1 : 1e3;
        double depthPercent = Double.parseDouble(tone.group(3));
        return depthPercent > 0 && depthPercent <= 100
                ? Optional.of(new Modulation(unitHz * Double.parseDouble(tone.group(1)), depthPercent))
                : Optional.empty();
    }

    /**
     * Whether there is a tone.
     *
     * @return false for a carrier alone
     */
    public boolean isOn() {
        return depthPercent > 0;
    }
}
