package org.slugpeak.core.receiver;

import java.util.function.DoubleUnaryOperator;

/**
 * What an IF strip does: the figures of a before-and-after table. Immutable; any thread may use it.
 *
 * @param sensitivityVolts generator at the converter grid for one volt of rise at the detector, RMS
 * @param strongestHz where the response is greatest
 * @param lowerHz lowest frequency within 6 dB of the greatest
 * @param upperHz highest frequency within 6 dB of the greatest
 */
public record IfPerformance(double sensitivityVolts, double strongestHz, double lowerHz, double upperHz) {

    private static final double REACH_HZ = 30e3;
    private static final double STEP_HZ = 50;

    static IfPerformance of(DoubleUnaryOperator gain, EnvelopeDetector detector, double intermediateHz) {
        double strongest = intermediateHz;
        for (double f = intermediateHz - REACH_HZ; f <= intermediateHz + REACH_HZ; f += STEP_HZ) {
            strongest = gain.applyAsDouble(f) > gain.applyAsDouble(strongest) ? f : strongest;
        }
        double half = gain.applyAsDouble(strongest) / 2;
        double lower = intermediateHz - REACH_HZ;
        while (gain.applyAsDouble(lower) < half) {
            lower += STEP_HZ;
        }
        double upper = intermediateHz + REACH_HZ;
        while (gain.applyAsDouble(upper) < half) {
            upper -= STEP_HZ;
        }
        double carrier = detector.carrierPeakVolts(Tarnfield.WORKING_VOLTS);
        return new IfPerformance(carrier / Math.sqrt(2) / gain.applyAsDouble(intermediateHz), strongest, lower, upper);
    }

    /**
     * Width between the points 6 dB down.
     *
     * @return hertz
     */
    public double widthHz() {
        return upperHz - lowerHz;
    }

    /**
     * Middle between the points 6 dB down.
     *
     * @return hertz
     */
    public double centreHz() {
        return (upperHz + lowerHz) / 2;
    }
}
