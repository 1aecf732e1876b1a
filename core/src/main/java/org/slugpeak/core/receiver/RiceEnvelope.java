package org.slugpeak.core.receiver;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The envelope of a carrier with Gaussian noise of the IF band: the length of {@code (A + x, y)}, x and y with the standard
 * deviation s. Source: S. O. Rice, Mathematical Analysis of Random Noise, Bell System Technical Journal 23 (1944) 282 and 24
 * (1945) 46, from memory; held against tables that were computed and sampled apart from this class.
 *
 * <ul>
 *   <li>density {@code r/s^2 exp(-(r^2 + A^2)/(2 s^2)) I0(r A/s^2)}
 *   <li>mean {@code s sqrt(pi/2) ((1 + q) I0(q/2) + q I1(q/2)) exp(-q/2)} with q = A^2/(2 s^2), mean square A^2 + 2 s^2
 *   <li>without a carrier 1.2533 s; with a strong one A + s^2/(2 A)
 * </ul>
 *
 * <p>Immutable; any thread may use it.
 *
 * @param carrierPeakVolts A; 0 or more
 * @param noiseVolts s: all noise in the IF band, RMS; positive
 */
public record RiceEnvelope(double carrierPeakVolts, double noiseVolts) {

    /** With 32 nodes over this reach means are within 1e-5. */
    private static final double REACH = 6.5;

    private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(32);

    /** Mean and standard deviation of a voltage that follows the envelope. */
    record Moments(double mean, double deviation) {}

    /**
     * Mean of the envelope itself: what an ideal detector shows.
     *
     * @return volts
     */
    public double meanVolts() {
        double q = carrierPeakVolts * carrierPeakVolts / (2 * noiseVolts * noiseVolts);
        return noiseVolts
                * Math.sqrt(Math.PI / 2)
                * ((1 + q) * ModifiedBessel.scaledI0(q / 2) + q * ModifiedBessel.scaledI1(q / 2));
    }

    /**
     * Mean and deviation of a detector that follows the envelope.
     *
     * @param law its voltage for a steady carrier, by peak volts
     * @return both, in volts
     */
    Moments through(DoubleUnaryOperator law) {
        double low = Math.max(0, carrierPeakVolts - REACH * noiseVolts);
        double half = (carrierPeakVolts + REACH * noiseVolts - low) / 2;
        double mean = 0;
        double square = 0;
        double weights = 0;
        for (int i = 0; i < NODES.getNumberOfPoints(); i++) {
            double envelope = low + half * (1 + NODES.getPoint(i));
            double weight = NODES.getWeight(i) * half * density(envelope);
            double volts = law.applyAsDouble(envelope);
            weights += weight;
            mean += weight * volts;
            square += weight * volts * volts;
        }
        mean /= weights;
        return new Moments(mean, Math.sqrt(Math.max(0, square / weights - mean * mean)));
    }

    private double density(double envelope) {
        double variance = noiseVolts * noiseVolts;
        double off = (envelope - carrierPeakVolts) / noiseVolts;
        return envelope
                / variance
                * Math.exp(-off * off / 2)
                * ModifiedBessel.scaledI0(envelope * carrierPeakVolts / variance);
    }
}
