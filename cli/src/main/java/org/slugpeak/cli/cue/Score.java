package org.slugpeak.cli.cue;

import java.util.List;

/**
 * How each event sounds. They differ in timbre and rhythm and not only in pitch, and each note keeps clear of 400 Hz, which
 * the set under test may be playing. Stateless.
 */
final class Score {

    private Score() {}

    static List<Note> of(Event event) {
        return switch (event) {
            case PASSED -> List.of(hollow(0, 0.2, 1320), hollow(0.22, 0.3, 880));
            case RETURNED -> List.of(new Note(0, 0.45, 1760, Timbre.BRIGHT, 0.4));
            case HELD -> List.of(chord(0, 784), chord(0.15, 988), chord(0.3, 1175), chord(0.45, 1568));
            case OVERLOAD -> List.of(rough(0), rough(0.8), rough(1.6));
            case LINK_LOST -> List.of(knock(0), knock(0.24));
            case LINK_BACK -> List.of(knock(0));
            case LOOK -> List.of(hollow(0, 0.18, 740), hollow(0.18, 0.3, 1110));
            case FINE -> List.of(blip(0, 1975));
            case COARSE -> List.of(blip(0, 494));
            case SHIFT -> List.of(blip(0, 1400), blip(0.13, 700));
            case BEGIN -> List.of(blip(0, 988), blip(0.16, 988), blip(0.32, 988));
        };
    }

    private static Note hollow(double start, double duration, double hertz) {
        return new Note(start, duration, hertz, Timbre.HOLLOW, 0.4);
    }

    /** The notes come in one after the other and end together. */
    private static Note chord(double start, double hertz) {
        return new Note(start, 1.1 - start, hertz, Timbre.BRIGHT, 0.12);
    }

    private static Note rough(double start) {
        return new Note(start, 0.5, 740, Timbre.ROUGH, 0.4);
    }

    private static Note knock(double start) {
        return new Note(start, 0.16, 210, Timbre.KNOCK, 0.8);
    }

    private static Note blip(double start, double hertz) {
        return new Note(start, 0.12, hertz, Timbre.PURE, 0.25);
    }
}
