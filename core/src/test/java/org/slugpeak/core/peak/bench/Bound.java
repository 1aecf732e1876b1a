package org.slugpeak.core.peak.bench;

/**
 * How far below the maximum a pass can be told at best: nobody knows of the fall before it stands out of the noise. Derived in
 * docs/peak-finder.md.
 */
final class Bound {

    /** Sigma of the fall at which a test that is wrong once in fifty hours decides. */
    private static final double SIGMAS = 5;
    /** Of all pairs of means, the best has this signal over its noise, in units of the fall at the last reading. */
    private static final double BEST_PAIR = 0.31;

    private Bound() {}

    static double flaggedDb(Family family) {
        double halfWidthsPerSecond = family.speedDegreesPerSecond() / family.halfWidthDegrees();
        double curvature = family.law().avcPower() * halfWidthsPerSecond * halfWidthsPerSecond;
        double signalPerSecond = BEST_PAIR * curvature / 2 * Math.sqrt(family.rate());
        double seconds = Math.pow(SIGMAS * family.noise() / signalPerSecond, 1 / 2.5);
        double u = halfWidthsPerSecond * seconds;
        return 10 * family.law().avcPower() * Math.log10(1 + u * u);
    }
}
