package org.slugpeak.core.receiver;

import org.slugpeak.core.decibel.Decibels;

/**
 * How much weaker than the signal a receiver's tuned circuits before the mixer make another frequency. Source: universal
 * resonance curve, Terman, Radio Engineers' Handbook, 1943, section 3. All methods are pure; any thread may use them.
 */
public final class ImageRatio {

    private ImageRatio() {}

    /**
     * Loss of one single-tuned circuit off its resonance: {@code 10 lg(1 + (Q y)^2)}, {@code y = f/f0 - f0/f}.
     *
     * @param q quality factor of the circuit as it works (loaded), positive
     * @param resonanceHz f0, Hz, positive
     * @param otherHz f, Hz, positive
     * @return dB, 0 at resonance, never negative
     */
    public static double lossDb(double q, double resonanceHz, double otherHz) {
        double y = otherHz / resonanceHz - resonanceHz / otherHz;
        return Decibels.ofPower(1 + q * q * y * y);
    }

    /**
     * Image ratio of several circuits that are all tuned to the signal.
     *
     * @param receiver gives the image
     * @param signalHz tuned frequency, Hz, positive
     * @param qs loaded Q of each tuned circuit between antenna and mixer
     * @return dB; infinite where there is no image
     */
    public static double imageRatioDb(Superhet receiver, double signalHz, double... qs) {
        double image = receiver.imageHz(signalHz);
        if (!(image > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (double q : qs) {
            sum += lossDb(q, signalHz, image);
        }
        return sum;
    }
}
