package org.slugpeak.cli.cue;

import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.ReadingTaken;

/**
 * Keeps the pitch of the best: it climbs as the best does, and drops by an octave when it would leave the range. One thread at
 * a time.
 */
final class Tuning {

    private static final double SMALLEST = 1e-12;

    private double bestHertz = PitchScale.FIRST_BEST_HERTZ;
    private double lastBest = Double.NaN;
    private double swing;

    void restart() {
        bestHertz = PitchScale.FIRST_BEST_HERTZ;
        lastBest = Double.NaN;
        swing = 0;
    }

    double bestHertz() {
        return bestHertz;
    }

    /**
     * Follows a new best.
     *
     * @return whether everything was moved by an octave to stay in the range
     */
    boolean follow(double best, Seek seek) {
        double magnitude = Math.max(SMALLEST, Math.abs(best));
        if (!Double.isNaN(lastBest)) {
            double gainDb = -seek.distanceDb(magnitude / lastBest);
            bestHertz *= Math.pow(2, gainDb / PitchScale.COARSE_DB_PER_OCTAVE);
        }
        lastBest = magnitude;
        return moved();
    }

    private boolean moved() {
        double before = bestHertz;
        while (bestHertz > PitchScale.HIGHEST_HERTZ) {
            bestHertz /= 2;
        }
        while (bestHertz < PitchScale.LOWEST_BEST_HERTZ) {
            bestHertz *= 2;
        }
        return bestHertz != before;
    }

    /** How far on the wrong side of the best, dB; negative where the best has not caught up with the reading. */
    static double distanceDb(ReadingTaken taken, Seek seek) {
        return seek.distanceDb(Math.max(SMALLEST, taken.ofBest()));
    }

    /** Magnitude of a reading over the largest one so far. */
    double ofSwing(double value) {
        swing = Math.max(swing, Math.abs(value));
        return swing == 0 ? 0 : Math.abs(value) / swing;
    }
}
