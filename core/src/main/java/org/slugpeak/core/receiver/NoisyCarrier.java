package org.slugpeak.core.receiver;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * What a meter sees of a detector whose carrier has the noise of an IF band with it: its mean by {@link RiceEnvelope}, and what is
 * left of the noise in the mean over so many seconds. One thread at a time.
 */
public final class NoisyCarrier {

    /** A carrier or noise that has changed by less than this part gives the same mean. */
    private static final double SAME = 1e-7;

    private final DoubleUnaryOperator law;
    private final SplittableRandom random;
    private double peakVolts = Double.NaN;
    private double noiseVolts = Double.NaN;
    private RiceEnvelope.Moments moments = new RiceEnvelope.Moments(0, 0);

    /**
     * A detector.
     *
     * @param law its voltage for a steady carrier, by peak volts
     * @param random of the noise
     */
    public NoisyCarrier(DoubleUnaryOperator law, SplittableRandom random) {
        this.law = law;
        this.random = random;
    }

    /**
     * What is seen of a carrier.
     *
     * @param carrierPeakVolts 0 or more
     * @param bandNoiseVolts all noise in the band, RMS; 0 for none
     * @param bandwidthHz of the noise, Hz
     * @param seconds over which the meter takes its mean
     * @return volts, 0 or more
     */
    public double volts(double carrierPeakVolts, double bandNoiseVolts, double bandwidthHz, double seconds) {
        if (bandNoiseVolts == 0) {
            return law.applyAsDouble(carrierPeakVolts);
        }
        if (!isNear(carrierPeakVolts, peakVolts) || !isNear(bandNoiseVolts, noiseVolts)) {
            peakVolts = carrierPeakVolts;
            noiseVolts = bandNoiseVolts;
            moments = new RiceEnvelope(carrierPeakVolts, bandNoiseVolts).through(law);
        }
        double values = Math.max(1, bandwidthHz * seconds);
        return Math.max(0, moments.mean() + moments.deviation() / Math.sqrt(values) * random.nextGaussian());
    }

    /**
     * The noise itself, of the carrier that was last asked for.
     *
     * @return volts RMS of all that the detector follows; 0 without noise
     */
    public double noiseVolts() {
        return moments.deviation();
    }

    private static boolean isNear(double now, double before) {
        return Math.abs(now - before) <= SAME * Math.abs(before);
    }
}
