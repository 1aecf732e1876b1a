package org.slugpeak.cli.quantity;

import java.util.Locale;
import org.slugpeak.core.scale.BeatNote;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A beat heard at a dial mark, as typed: {@code DIAL:CARRIER:PITCH:high[:HARMONIC]}. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param note the beat
 */
public record DialBeat(double dialHz, BeatNote note) {

    private static final double HIGHEST_PITCH_HZ = 20_000;

    /** Reads {@code 455:910:300Hz:high:2}. */
    public static final class Converter implements ITypeConverter<DialBeat> {

        /** Called by the command-line library. */
        public Converter() {}

        @Override
        public DialBeat convert(String text) {
            String[] parts = text.split(":", -1);
            if (parts.length < 4 || parts.length > 5) {
                throw new TypeConversionException("'" + text
                        + "' is no beat: give dial, carrier, pitch and high or low (and the harmonic), for example"
                        + " 455:910:300Hz:high:2");
            }
            Frequency frequency = new Frequency();
            int harmonic = parts.length == 5 ? harmonic(parts[4]) : 1;
            BeatNote note = new BeatNote(frequency.convert(parts[1]), harmonic, pitchHz(parts[2]), direction(parts[3]));
            return new DialBeat(frequency.convert(parts[0]), note);
        }

        private static double pitchHz(String text) {
            if (text.matches("0+(Hz)?")) {
                return 0;
            }
            double hz = new Frequency().convert(text);
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
                    throw new TypeConversionException("'" + text
                            + "' is neither high nor low: nudge the generator up; if the note rises it is high");
            };
        }

        private static int harmonic(String text) {
            if (!text.matches("[1-9]\\d{0,2}")) {
                throw new TypeConversionException("'" + text + "' is no harmonic: give 1, 2, 3 and so on");
            }
            return Integer.parseInt(text);
        }
    }
}
