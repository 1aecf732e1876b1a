package org.slugpeak.core.level;

import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.slugpeak.core.decibel.Decibels;

/** A straight line through the decibels of readings, by least squares (GUM, JCGM 100:2008, annex H.3). One thread at a time. */
final class DecibelLine {

    /** Readings that agree to the last digit are not known better than that. */
    private static final double LEAST_SIGMA_DB = 0.01;

    /** Of a thousand lines through readings that stand, one is taken for a slope. */
    private static final double BY_CHANCE = 0.001;

    /** Far below any reading. */
    private static final double NOTHING = 1e-9;

    private final SimpleRegression fit = new SimpleRegression();
    private double sumSeconds;

    void add(long tNanos, double level) {
        double seconds = tNanos / 1e9;
        sumSeconds += seconds;
        fit.addData(seconds, Decibels.of(Math.max(NOTHING, level)));
    }

    boolean isKnown() {
        return fit.getN() > 2 && fit.getXSumSquares() > 0;
    }

    /** Whether it climbs or falls by more than its scatter explains. */
    boolean isSloped() {
        return fit.getSlope() != 0 && !(fit.getSignificance() > BY_CHANCE);
    }

    double dbAt(double seconds) {
        return fit.predict(seconds);
    }

    double dbPerSecond() {
        return fit.getSlope();
    }

    double sigmaDbAt(double seconds) {
        double away = seconds - sumSeconds / fit.getN();
        double share = 1.0 / fit.getN() + away * away / fit.getXSumSquares();
        return Math.max(LEAST_SIGMA_DB, Math.sqrt(Math.max(0, fit.getMeanSquareError()) * share));
    }
}
