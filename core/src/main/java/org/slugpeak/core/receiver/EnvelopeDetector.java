package org.slugpeak.core.receiver;

import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A detector's voltage as a function of its carrier, worked out once so that it can be asked at every step of a simulation.
 * Between the points of its table a cubic spline runs through {@code ln(rise/carrier^2)} against {@code ln carrier}, which is
 * flat in the square-law toe; below the table the square law goes on, above it the straight line. Within 1e-4 of
 * {@link DiodeDetector}.
 *
 * <p>Noise of the IF band is followed by the load (470 kohm and 100 pF are as quick as the noise), so that a meter shows the mean
 * of this law over the envelope, see {@link RiceEnvelope}.
 *
 * <p>Immutable; any thread may use it.
 */
public final class EnvelopeDetector {

    private static final double LOWEST_VOLTS = 1e-3;
    private static final double HIGHEST_VOLTS = 100;
    private static final int POINTS = 121;
    private static final int HARMONIC_POINTS = 64;

    private final double restVolts;
    private final PolynomialSplineFunction shape;
    private final double lowest;
    private final double highest;

    private EnvelopeDetector(double restVolts, double[] lnCarrier, double[] lnShape) {
        this.restVolts = restVolts;
        this.shape = new SplineInterpolator().interpolate(lnCarrier, lnShape);
        this.lowest = lnCarrier[0];
        this.highest = lnCarrier[POINTS - 1];
    }

    /**
     * Works the table out.
     *
     * @param detector with its load and source
     * @return the detector as a function
     */
    public static EnvelopeDetector of(DiodeDetector detector) {
        double rest = detector.restVolts();
        double[] lnCarrier = new double[POINTS];
        double[] lnShape = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double peak = LOWEST_VOLTS * Math.pow(HIGHEST_VOLTS / LOWEST_VOLTS, i / (POINTS - 1.0));
            lnCarrier[i] = Math.log(detector.carrierPeakVolts(peak));
            lnShape[i] = Math.log(detector.dcVolts(peak) - rest) - 2 * lnCarrier[i];
        }
        return new EnvelopeDetector(rest, lnCarrier, lnShape);
    }

    /**
     * What stands across the load without signal and noise.
     *
     * @return volts, as a magnitude
     */
    public double restVolts() {
        return restVolts;
    }

    /**
     * What a carrier adds to the resting voltage.
     *
     * @param carrierPeakVolts without the diode; 0 or more
     * @return volts
     */
    public double riseVolts(double carrierPeakVolts) {
        if (carrierPeakVolts == 0) {
            return 0;
        }
        double ln = Math.log(carrierPeakVolts);
        if (ln > highest) {
            return Math.exp(shape.value(highest) + highest) * carrierPeakVolts;
        }
        return carrierPeakVolts * carrierPeakVolts * Math.exp(shape.value(Math.max(lowest, ln)));
    }

    /**
     * The carrier for a wanted rise.
     *
     * @param riseVolts 0 or more
     * @return peak volts without the diode
     */
    public double carrierPeakVolts(double riseVolts) {
        double low = 0;
        double high = 1;
        while (riseVolts(high) < riseVolts) {
            high *= 2;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (riseVolts(middle) < riseVolts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * The audio across the load, by taking the DC law for each instant of the envelope.
     *
     * @param carrierPeakVolts unmodulated; 0 or more
     * @param modulation depth as a fraction, 0 to 1
     * @return peak volts of the fundamental
     */
    public double audioPeakVolts(double carrierPeakVolts, double modulation) {
        double sum = 0;
        for (int i = 0; i < HARMONIC_POINTS; i++) {
            double cosine = Math.cos(2 * Math.PI * i / HARMONIC_POINTS);
            sum += cosine * riseVolts(carrierPeakVolts * (1 + modulation * cosine));
        }
        return 2 * sum / HARMONIC_POINTS;
    }
}
