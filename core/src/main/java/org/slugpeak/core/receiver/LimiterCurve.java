package org.slugpeak.core.receiver;

import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * What a limiter shows and passes on as functions of the carrier that its winding would give without it, worked out once so that they
 * can be asked at every step of a simulation. A cubic spline runs through {@code ln(output/carrier)} against {@code ln carrier}; below
 * the table the output is in proportion, above it stays. Within 1e-3 of {@link Limiter}. Immutable; any thread may use it.
 */
public final class LimiterCurve {

    private static final double LOWEST_VOLTS = 1e-2;
    private static final double HIGHEST_VOLTS = 100;
    private static final int POINTS = 81;

    private final EnvelopeDetector grid;
    private final PolynomialSplineFunction shape;
    private final double lowest;
    private final double highest;

    private LimiterCurve(EnvelopeDetector grid, double[] lnCarrier, double[] lnShape) {
        this.grid = grid;
        this.shape = new SplineInterpolator().interpolate(lnCarrier, lnShape);
        this.lowest = lnCarrier[0];
        this.highest = lnCarrier[POINTS - 1];
    }

    /**
     * Works the table out.
     *
     * @param limiter with its grid and valve
     * @return the limiter as functions
     */
    public static LimiterCurve of(Limiter limiter) {
        double[] lnCarrier = new double[POINTS];
        double[] lnShape = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double peak = LOWEST_VOLTS * Math.pow(HIGHEST_VOLTS / LOWEST_VOLTS, i / (POINTS - 1.0));
            lnCarrier[i] = Math.log(limiter.grid().carrierPeakVolts(peak));
            lnShape[i] = Math.log(limiter.outputAmpere(peak)) - lnCarrier[i];
        }
        return new LimiterCurve(EnvelopeDetector.of(limiter.grid()), lnCarrier, lnShape);
    }

    /**
     * What its meter point shows.
     *
     * @return rest and rise by the carrier without the grid's current
     */
    public EnvelopeDetector grid() {
        return grid;
    }

    /**
     * What it passes on.
     *
     * @param freePeakVolts of the carrier without the grid's current; 0 or more
     * @return fundamental of the anode current, ampere, peak
     */
    public double outputAmpere(double freePeakVolts) {
        if (freePeakVolts == 0) {
            return 0;
        }
        double ln = Math.log(freePeakVolts);
        double within = Math.max(lowest, Math.min(highest, ln));
        return Math.exp(shape.value(within) + Math.min(ln, highest));
    }
}
