package org.slugpeak.core.peak;

/**
 * Picks the longest mean that still agrees with all shorter ones: long while nothing moves, short while the reading moves
 * quickly. Source: Lepski, On a problem of adaptive estimation in Gaussian white noise, Theory Probab. Appl. 35 (1990) 454.
 */
final class Smoother {

    /** A longer mean disagrees when it differs by more than this many sigma of the difference. */
    private static final double AGREE = 3;

    private static final double LONGEST_SECONDS = 3;
    private static final int ALWAYS = 2;

    private double value = Double.NaN;
    private double sigma = Double.NaN;
    private long middleNanos;
    private double lengthSeconds;

    void look(Pyramid pyramid, Noise noise, double blockSeconds) {
        int level = 0;
        double mean = pyramid.mean(0);
        while (level + 1 < Pyramid.LEVELS && pyramid.has(level + 1, 1) && allowed(level + 1, blockSeconds)) {
            double longer = pyramid.mean(level + 1);
            // A mean differs from its own newer half by 1/sqrt(2) of the sigma of that half.
            double spread = Math.sqrt(0.5) * noise.white(level, mean) + noise.excess(level);
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
