package org.slugpeak.cli.quantity;

import java.util.Locale;
import org.slugpeak.core.scale.BeatNote;
import picocli.CommandLine.TypeConversionException;

/**
 * A beat heard at a dial mark, as typed: {@code DIAL:CARRIER:PITCH:high[:HARMONIC]}. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param note the beat
 */
public record DialBeat(double dialHz, BeatNote note) {

    private static final double HIGHEST_PITCH_HZ = 20_000;

    /**
     * Reads {@code 455:910:300Hz:high:2}.
     *
     * @param text as typed
     * @param decimalComma whether numbers are written {@code 455,5}, whatever else they might mean
     * @return the beat
     * @throws TypeConversionException where it is no beat, or may mean two
     */
    public static DialBeat parse(String text, boolean decimalComma) {
        String[] parts = text.split(":", -1);
        if (parts.length < 4 || parts.length > 5) {
            throw new TypeConversionException("'" + text
                    + "' is no beat: give dial, carrier, pitch and high or low (and the harmonic), for example"
                    + " 455:910:300Hz:high:2");
        }
        int harmonic = parts.length == 5 ? harmonic(parts[4]) : 1;
        double pitchHz = pitchHz(parts[2], decimalComma);
        BeatNote note = new BeatNote(hz(parts[1], decimalComma), harmonic, pitchHz, direction(parts[3]));
        return new DialBeat(hz(parts[0], decimalComma), note);
    }

    private static double hz(String text, boolean decimalComma) {
        return new Frequency().convert(DecimalComma.withPoint(text, decimalComma));
    }

    private static double pitchHz(String text, boolean decimalComma) {
        if (text.matches("0+(Hz)?")) {
            return 0;
        }
        double hz = hz(text, decimalComma);
        if (hz > HIGHEST_PITCH_HZ) {
            throw new TypeConversionException(
                    "a beat of '" + text + "' cannot be heard: give the pitch in Hz, for example 300Hz");
        }
        return hz;
    }

    private static BeatNote.Direction direction(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "high" -> BeatNote.Direction.HIGH;
            case "low" -> BeatNote.Direction.LOW;
            default ->
                throw new TypeConversionException(
                        "'" + text + "' is neither high nor low: nudge the generator up; if the note rises it is high");
        };
    }

    private static int harmonic(String text) {
        if (!text.matches("[1-9]\\d{0,2}")) {
            throw new TypeConversionException("'" + text + "' is no harmonic: give 1, 2, 3 and so on");
        }
        return Integer.parseInt(text);
    }
}
