package org.slugpeak.core.peak.grammar;

import java.util.SplittableRandom;

/**
 * What makes readings of a level.
 *
 * @param perSecond how many; positive
 * @param noise one sigma of normal noise
 * @param digit the last digit; 0 for none
 * @param stamps what the transport makes of the times
 */
public record Meter(double perSecond, double noise, double digit, Stamps stamps) {

    /** A meter without faults. */
    public static Meter of(double perSecond) {
        return new Meter(perSecond, 0, 0, new Stamps.Exact());
    }

    /** The same with noise. */
    public Meter withNoise(double sigma) {
        return new Meter(perSecond, sigma, digit, stamps);
    }

    double read(double level, SplittableRandom random) {
        double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        double value = level + noise * radius * Math.cos(2 * Math.PI * random.nextDouble());
        return digit > 0 ? Math.rint(value / digit) * digit : value;
    }

    @Override
    public String toString() {
        return " at " + Words.number(perSecond) + "/s"
                + (noise > 0 ? ", noise " + Words.volts(noise) : "")
                + (digit > 0 ? ", digit " + Words.volts(digit) : "")
                + (stamps instanceof Stamps.Exact ? "" : ", " + stamps);
    }
}
