package org.slugpeak.core.steps;

import org.slugpeak.core.peak.Trend;

/** What is made of one value after the other. One thread at a time. */
interface StepHunt {

    /** The next value; the one before it lies one step away. */
    void take(long tNanos, double value);

    /** A step that gave no value: what comes next has no neighbour. */
    void skip();

    /** As read; NaN until there is one. */
    double best();

    /** One sigma of it; NaN until it is known. */
    double bestSigma();

    /** The last value over the best; NaN where that says nothing. */
    double ofBest();

    /** Which way the size of the reading goes from one value to the next, for values next to each other. */
    static Trend trend(double before, double value) {
        double growth = Math.abs(value) - Math.abs(before);
        return growth > 0 ? Trend.RISING : growth < 0 ? Trend.FALLING : Trend.STEADY;
    }
}
