package org.slugpeak.cli.cue;

/** The colour of a note, by the strength of its partials. Immutable; any thread may use it. */
enum Timbre {
    /** One partial. */
    PURE {
        @Override
        double at(double phase, double seconds) {
            return Math.sin(phase);
        }
    },
    /** Odd partials, like a stopped pipe. */
    HOLLOW {
        @Override
        double at(double phase, double seconds) {
            return 0.75 * Math.sin(phase) + 0.25 * Math.sin(3 * phase);
        }
    },
    /** Partials that ring. */
    BRIGHT {
        @Override
        double at(double phase, double seconds) {
            return 0.6 * Math.sin(phase) + 0.3 * Math.sin(2 * phase) + 0.1 * Math.sin(4 * phase);
        }
    },
    /** Beats at 45 Hz within itself, which is heard as roughness. */
    ROUGH {
        @Override
        double at(double phase, double seconds) {
            double flutter = 0.5 - 0.5 * Math.cos(2 * Math.PI * 45 * seconds);
            return flutter * (0.7 * Math.sin(phase) + 0.3 * Math.sin(2 * phase));
        }
    },
    /** Partials in no harmonic order that die away, like a knock on wood. */
    KNOCK {
        @Override
        double at(double phase, double seconds) {
            return Math.exp(-8 * seconds) * (0.6 * Math.sin(phase) + 0.4 * Math.sin(2.76 * phase));
        }
    };

    /**
     * The wave.
     *
     * @param phase of the lowest partial, radians
     * @param seconds since the note began
     * @return from -1 to 1
     */
    abstract double at(double phase, double seconds);
}
