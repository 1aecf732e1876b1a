package org.slugpeak.core.level;

import org.slugpeak.core.decibel.Decibels;

/**
 * How the level rose towards a maximum: when it first stood as high as this. Time that was spent below a level reached earlier
 * counts to the step in which it was spent. A fall by more than {@value #FALL_DB} dB begins another approach. One thread at a time.
 */
final class Approach {

    /** More than a hand falls before it hears that it has passed, less than a step of a generator. */
    private static final double FALL_DB = 0.7;

    private static final double FALLEN = Decibels.ratio(-FALL_DB);

    /** A finer trace than this is of no use: 0.05 dB. */
    private static final double FINER = Decibels.ratio(0.05);

    /** The last 6 dB at least. */
    private static final int POINTS = 128;

    private final double[] levels = new double[POINTS];
    private final double[] seconds = new double[POINTS];
    private int size;

    /** Takes the next level, as a positive magnitude. */
    void add(long tNanos, double level) {
        if (size > 0 && level < FALLEN * highest()) {
            size = 0;
        }
        if (size > 0 && level < FINER * highest()) {
            return;
        }
        if (size == POINTS) {
            System.arraycopy(levels, 1, levels, 0, POINTS - 1);
            System.arraycopy(seconds, 1, seconds, 0, POINTS - 1);
            size--;
        }
        levels[size] = level;
        seconds[size] = tNanos / 1e9;
        size++;
    }

    private double highest() {
        return levels[size - 1];
    }

    void clear() {
        size = 0;
    }

    /** When the level first was as high as this, between readings by a straight line; NaN where that was not seen. */
    double secondsAt(double level) {
        for (int i = size - 1; i > 0; i--) {
            if (levels[i - 1] <= level && level <= levels[i]) {
                double share = (level - levels[i - 1]) / (levels[i] - levels[i - 1]);
                return seconds[i - 1] + share * (seconds[i] - seconds[i - 1]);
            }
        }
        return Double.NaN;
    }
}
