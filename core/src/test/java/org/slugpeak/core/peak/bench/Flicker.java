package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/**
 * 1/f noise: a sum of relaxation processes whose time constants are an octave apart, each of the same variance v. One with the time
 * constant T has the one-sided spectrum 4 v T / (1 + (2 pi f T)^2); summed over the octaves that is v / (ln 2 f), which puts v into
 * every octave of frequency (Bernamont, Proc. Phys. Soc. 49 extra (1937) 138; van der Ziel, Physica 16 (1950) 359; from memory). The
 * spectrum at a frequency does not depend on the reading rate. Octaves quicker than half the time of a reading are left out: a meter
 * averages over them.
 */
final class Flicker implements Disturbance {

    /** The slowest octave: a 1/f spectrum down to about 2 pi times as many seconds. */
    static final double LONGEST_SECONDS = 256;
    /** Each process is worked out so often in its own time constant, and drawn straight between. */
    private static final int KNOTS = 16;

    private final SplittableRandom random;
    private final double sigma;
    private final double[] stepSeconds;
    private final double[] keeps;
    private final double[] from;
    private final double[] to;
    private final double[] toAt;

    /**
     * Begins in the middle of things.
     *
     * @param sigma of each octave, as part of the reading
     */
    Flicker(double sigma, SplittableRandom random, double rate) {
        this.random = random;
        this.sigma = sigma;
        int octaves = octaves(rate);
        stepSeconds = new double[octaves];
        keeps = new double[octaves];
        from = new double[octaves];
        to = new double[octaves];
        toAt = new double[octaves];
        for (int i = 0; i < octaves; i++) {
            double constant = LONGEST_SECONDS / (1L << i);
            stepSeconds[i] = Math.max(constant / KNOTS, 1 / rate);
            keeps[i] = Math.exp(-stepSeconds[i] / constant);
            to[i] = random.nextGaussian();
        }
    }

    /** Their number, from the slowest down to half the time of a reading. */
    static int octaves(double rate) {
        return 2 + (int) Math.floor(Math.log(LONGEST_SECONDS * rate) / Math.log(2));
    }

    static Maker ofOctave(double sigma) {
        return (random, rate) -> new Flicker(sigma, random, rate);
    }

    @Override
    public double read(double seconds, double level) {
        double sum = 0;
        for (int i = 0; i < to.length; i++) {
            while (seconds > toAt[i]) {
                from[i] = to[i];
                to[i] = keeps[i] * to[i] + Math.sqrt(1 - keeps[i] * keeps[i]) * random.nextGaussian();
                toAt[i] += stepSeconds[i];
            }
            sum += to[i] + (from[i] - to[i]) * (toAt[i] - seconds) / stepSeconds[i];
        }
        return level * (1 + sigma * sum);
    }
}
