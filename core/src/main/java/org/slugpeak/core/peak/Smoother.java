package org.slugpeak.core.peak;

/**
 * Picks the longest mean that still agrees with all shorter ones: long while nothing moves, short while the reading moves
 * quickly. Source: Lepski, On a problem of adaptive estimation in Gaussian white noise, Theory Probab. Appl. 35 (1990) 454.
 *
 * <p>Slow noise (hum beats, flicker) can be smoothed away or followed. A verdict wants it away. What is shown and heard has to
 * follow: slow noise cannot be told from an uneven hand within the tenth of a second that an ear allows.
 */
final class Smoother {

    /** A longer mean disagrees when it differs by more than this many sigma of the difference. */
    private static final double AGREE = 3;

    private static final double LONGEST_SECONDS = 3;
    private static final int ALWAYS = 2;

    private final boolean followsSlowNoise;
    private double value = Double.NaN;
    private double sigma = Double.NaN;
    private long middleNanos;
    private double lengthSeconds;

    private Smoother(boolean followsSlowNoise) {
        this.followsSlowNoise = followsSlowNoise;
    }

    static Smoother forVerdicts() {
        return new Smoother(false);
    }

    static Smoother forShowing() {
        return new Smoother(true);
    }

    void look(Pyramid pyramid, Noise noise, double blockSeconds) {
        int level = 0;
        double mean = pyramid.mean(0);
        while (level + 1 < Pyramid.LEVELS && pyramid.has(level + 1, 1) && allowed(level + 1, blockSeconds)) {
            double longer = pyramid.mean(level + 1);
            // A mean differs from its own newer half by 1/sqrt(2) of the sigma of that half.
            double spread = Math.sqrt(0.5) * noise.white(level, mean) + (followsSlowNoise ? 0 : noise.excess(level));
            if (Math.abs(longer - mean) > AGREE * spread + 0.5 * noise.step()) {
                break;
            }
            mean = longer;
            level++;
        }
        value = mean;
        sigma = noise.sigma(level, mean);
        middleNanos = pyramid.middleNanos(level);
        lengthSeconds = blockSeconds * Pyramid.length(level);
    }

    private static boolean allowed(int level, double blockSeconds) {
        return level < ALWAYS || blockSeconds * Pyramid.length(level) <= LONGEST_SECONDS;
    }

    double value() {
        return value;
    }

    double sigma() {
        return sigma;
    }

    long middleNanos() {
        return middleNanos;
    }

    /** How long the mean is that was picked. */
    double lengthSeconds() {
        return lengthSeconds;
    }

    void clear() {
        value = Double.NaN;
        sigma = Double.NaN;
    }
}
