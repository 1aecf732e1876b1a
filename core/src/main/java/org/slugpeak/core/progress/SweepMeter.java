package org.slugpeak.core.progress;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.slugpeak.core.decibel.Decibels;

/**
 * Finds the greatest reading of each sweep while the gang is rocked across a signal, and when the adjuster turned meanwhile is
 * at its optimum: sweeps were worse on both sides of it, and two are back at the best. Somebody who began by turning the wrong way
 * has seen worse sweeps, but on one side only. Behind a gain control or a slow meter sweeps one way show less than those the other
 * way, so that the greater one of two that follow each other counts. One thread at a time.
 */
final class SweepMeter {

    /** A sweep is over when the reading has fallen by this from its greatest, dB. */
    private static final double FALL_DB = 1;

    /** Sweeps as good as the best, dB. */
    private static final double BACK_WITHIN_DB = 0.1;

    /** Sweeps clearly worse than the best, dB. */
    private static final double WORSE_BY_DB = 0.25;

    private static final int WORSE_IN_A_ROW = 2;

    /** Of sweeps that count with the one before: two of one way, or one of each. */
    private static final int BACK_IN_A_ROW = 3;

    /** So many readings count as one: a single one of a quick meter is higher than the signal by its noise. */
    private static final long TOGETHER_NANOS = 60_000_000L;

    private final DoubleUnaryOperator straight;
    private final SteadyWatch together = new SteadyWatch(TOGETHER_NANOS, 0);
    /** Whoever begins on the signal has stood there, and shows more than a sweep: the first one counts from a rise, too. */
    private boolean rising;

    private double top;
    private double bottom = Double.POSITIVE_INFINITY;
    private double topBefore;
    private double best;
    private double first = Double.NaN;
    private int worseInARow;
    private int backInARow;
    private int worseSides;

    /** {@code straight}: what a straight detector without a rest would show of a magnitude that is read; sweeps are compared by that. */
    SweepMeter(DoubleUnaryOperator straight) {
        this.straight = straight;
    }

    /** The greatest level of the sweep that has just ended and the one before it, if one has. */
    OptionalDouble see(long tNanos, double value) {
        together.see(tNanos, value);
        double level = together.mean();
        if (rising) {
            top = Math.max(top, level);
            if (level < top * Decibels.ratio(-FALL_DB)) {
                rising = false;
                bottom = level;
                double toAndFro = Math.max(topBefore, top);
                topBefore = top;
                return OptionalDouble.of(sweep(straight.applyAsDouble(toAndFro)));
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
        if (greatest > best) {
            // What was worse before lies to one side of it.
            worseSides = greatest > best * Decibels.ratio(BACK_WITHIN_DB) ? Math.min(1, worseSides) : worseSides;
            worseSides = rose(greatest) ? Math.max(1, worseSides) : worseSides;
            best = greatest;
        }
        first = Double.isNaN(first) ? greatest : first;
        worseInARow = greatest < best * Decibels.ratio(-WORSE_BY_DB) ? worseInARow + 1 : 0;
        backInARow = greatest >= best * Decibels.ratio(-BACK_WITHIN_DB) ? backInARow + 1 : 0;
        worseSides += worseInARow == WORSE_IN_A_ROW ? 1 : 0;
        return greatest;
    }

    /** Whether the first sweep was clearly worse than the present one. */
    private boolean rose(double greatest) {
        return first < greatest * Decibels.ratio(-WORSE_BY_DB);
    }

    /** The greatest level of the first sweep. */
    double first() {
        return first;
    }

    /** The greatest level of the best sweep. */
    double best() {
        return best;
    }

    boolean isAtOptimum() {
        return worseSides >= 2 && backInARow >= BACK_IN_A_ROW;
    }
}
