package org.slugpeak.core.progress;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;

/**
 * Finds the greatest reading of each sweep while the gang is rocked across a signal, and when the adjuster turned meanwhile is
 * at its optimum: sweeps have got worse beyond it, and two in a row are back at the best. One thread at a time.
 */
final class SweepMeter {

    /** A sweep is over when the reading has fallen by this from its greatest, dB. */
    private static final double FALL_DB = 1;

    /** Sweeps as good as the best, dB. */
    private static final double BACK_WITHIN_DB = 0.1;

    /** Sweeps clearly worse than the best, dB. */
    private static final double WORSE_BY_DB = 0.25;

    private static final int IN_A_ROW = 2;

    private boolean rising = true;
    private double top;
    private double bottom = Double.POSITIVE_INFINITY;
    private double best;
    private int worseInARow;
    private int backInARow;
    private boolean passed;

    /** The greatest reading of the sweep that has just ended, if one has. */
    OptionalDouble see(double value) {
        double level = Math.abs(value);
        if (rising) {
            top = Math.max(top, level);
            if (level < top * Decibels.ratio(-FALL_DB)) {
                rising = false;
                bottom = level;
                return OptionalDouble.of(sweep(top));
            }
        } else {
            bottom = Math.min(bottom, level);
            if (level > bottom * Decibels.ratio(FALL_DB)) {
                rising = true;
                top = level;
            }
        }
        return OptionalDouble.empty();
    }

    private double sweep(double greatest) {
        best = Math.max(best, greatest);
        worseInARow = greatest < best * Decibels.ratio(-WORSE_BY_DB) ? worseInARow + 1 : 0;
        backInARow = greatest >= best * Decibels.ratio(-BACK_WITHIN_DB) ? backInARow + 1 : 0;
        passed = passed || worseInARow >= IN_A_ROW;
        return greatest;
    }

    /** The last sweep against the best one, dB, not positive. */
    double belowBestDb(double greatest) {
        return Decibels.of(greatest / best);
    }

    boolean isAtOptimum() {
        return passed && backInARow >= IN_A_ROW;
    }
}
