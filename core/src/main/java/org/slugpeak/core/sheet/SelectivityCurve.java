package org.slugpeak.core.sheet;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How much more input it takes off the signal, on both sides of it. Through the settings runs one cubic spline, whose crossings are found
 * by Brent's method (both from Commons Math). One thread at a time.
 */
final class SelectivityCurve {

    private static final int MOST_CALLS = 100;

    /** The spline through a skirt of coupled pairs is within a hundredth of a width up to here. */
    private static final double STEEP_DB = 10;

    /** How well a crossing is found. */
    private static final double ACCURACY_HZ = 0.1;

    /** A width wants a point or two on each side and the signal itself. */
    private static final int FEWEST = 5;

    private record Loss(double lossDb, double sigmaDb) {}

    /**
     * A width.
     *
     * @param lowerHz crossing below the signal, Hz from it
     * @param upperHz crossing above it
     * @param sigmaHz one standard deviation of their distance
     */
    record Width(double lowerHz, double upperHz, double sigmaHz) {

        double hz() {
            return upperHz - lowerHz;
        }
    }

    private final NavigableMap<Double, Loss> losses = new TreeMap<>(Map.of(0.0, new Loss(0, 0)));

    /** At so many hertz above the signal, negative below it. */
    void take(double offHz, double lossDb, double sigmaDb) {
        losses.put(offHz, new Loss(lossDb, sigmaDb));
    }

    /** The outermost place on a side so far. */
    double lastHz(boolean above) {
        return above ? losses.lastKey() : losses.firstKey();
    }

    /** What is lost there. */
    double lastDb(boolean above) {
        return lossDb(lastHz(above));
    }

    /** The middle between two neighbours of a side that lie too far apart in loss for a spline, but not nearer than so much. */
    OptionalDouble steepHz(boolean above, double nearestHz) {
        NavigableMap<Double, Loss> side = above ? losses.tailMap(0.0, true) : losses.headMap(0.0, true);
        double before = side.firstKey();
        for (double hz : side.tailMap(before, false).keySet()) {
            if (Math.abs(lossDb(hz) - lossDb(before)) > STEEP_DB && hz - before >= 2 * nearestHz) {
                return OptionalDouble.of((before + hz) / 2);
            }
            before = hz;
        }
        return OptionalDouble.empty();
    }

    /** What a place may lose: between two the mean of both; beyond the outermost as the last two go on, but no less. */
    double expectedDb(double offHz) {
        boolean above = offHz > 0;
        if (Math.abs(offHz) < Math.abs(lastHz(above))) {
            return (lossDb(losses.lowerKey(offHz)) + lossDb(losses.higherKey(offHz))) / 2;
        }
        double lastHz = lastHz(above);
        double lastDb = lossDb(lastHz);
        if (lastHz == 0) {
            return lastDb;
        }
        double beforeHz = above ? losses.lowerKey(lastHz) : losses.higherKey(lastHz);
        double slope = (lastDb - lossDb(beforeHz)) / Math.abs(lastHz - beforeHz);
        return lastDb + Math.max(0, slope) * Math.abs(offHz - lastHz);
    }

    private double lossDb(double offHz) {
        return losses.getOrDefault(offHz, new Loss(Double.NaN, Double.NaN)).lossDb();
    }

    /** How wide it is between the outermost crossings of a loss; empty where one side does not fall so far. */
    Optional<Width> width(double lossDb) {
        double[] offHz =
                losses.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        double[] lossesDb = losses.values().stream().mapToDouble(Loss::lossDb).toArray();
        int low = 0;
        int high = offHz.length - 1;
        if (high + 1 < FEWEST || lossesDb[low] < lossDb || lossesDb[high] < lossDb) {
            return Optional.empty();
        }
        while (low < high && lossesDb[low + 1] >= lossDb) {
            low++;
        }
        while (high > low && lossesDb[high - 1] >= lossDb) {
            high--;
        }
        if (low >= high) {
            return Optional.empty();
        }
        PolynomialSplineFunction spline = new SplineInterpolator().interpolate(offHz, lossesDb);
        double lower = crossing(spline, lossDb, offHz[low], offHz[low + 1]);
        double upper = crossing(spline, lossDb, offHz[high - 1], offHz[high]);
        double sigma = Math.hypot(sigmaHz(offHz[low], offHz[low + 1]), sigmaHz(offHz[high], offHz[high - 1]));
        return Optional.of(new Width(lower, upper, sigma));
    }

    private static double crossing(PolynomialSplineFunction spline, double lossDb, double fromHz, double toHz) {
        return new BrentSolver(ACCURACY_HZ).solve(MOST_CALLS, hz -> spline.value(hz) - lossDb, fromHz, toHz);
    }

    private double sigmaHz(double outerHz, double innerHz) {
        double dbPerHz = (lossDb(outerHz) - lossDb(innerHz)) / Math.abs(outerHz - innerHz);
        double sigmaDb =
                losses.subMap(Math.min(outerHz, innerHz), true, Math.max(outerHz, innerHz), true).values().stream()
                        .mapToDouble(Loss::sigmaDb)
                        .max()
                        .orElse(Double.NaN);
        return sigmaDb / dbPerHz;
    }
}
