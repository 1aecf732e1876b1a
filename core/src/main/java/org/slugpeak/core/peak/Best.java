package org.slugpeak.core.peak;

/**
 * The highest level that was surely reached. The highest of several noisy means is too high by what the greatest of so many
 * normal deviates is expected to be; so a mean counts only less that. The shorter the mean, the more of them fit on the top
 * of a pass. While the reading stays at the top the mean gets longer, its sigma goes to zero, and the best approaches the
 * true level from below.
 *
 * <p>Expected greatest of n normal deviates: Tippett, Biometrika 17 (1925) 364; the values for n = 1, 2, 4 ... 256.
 */
final class Best {

    private static final double[] GREATEST_OF_POWERS_OF_TWO = {
        0, 0.5642, 1.0294, 1.4236, 1.7660, 2.0697, 2.3437, 2.5944, 2.8269
    };
    /** How long a hand takes across the top, about. */
    private static final double TOP_SECONDS = 2;

    private double value = Double.NaN;
    private double sigma = Double.NaN;
    private long atNanos;

    void offer(Smoother level) {
        double sure = level.value() - selection(level.lengthSeconds()) * level.sigma();
        boolean better = sure > value && (level.sigma() <= sigma || sure - value > level.sigma());
        if (Double.isNaN(value) || better) {
            value = sure;
            sigma = level.sigma();
            atNanos = level.middleNanos();
        }
    }

    private static double selection(double lengthSeconds) {
        double means = TOP_SECONDS / lengthSeconds;
        int doublings = means >= 2 ? Math.min(Math.getExponent(means), GREATEST_OF_POWERS_OF_TWO.length - 1) : 1;
        return GREATEST_OF_POWERS_OF_TWO[doublings];
    }

    /** Takes over another best. */
    void copy(Best other) {
        value = other.value;
        sigma = other.sigma;
        atNanos = other.atNanos;
    }

    /** Joins a second look at the same top, each look weighted by the inverse of its variance. */
    void blend(Best other) {
        double larger = Math.max(sigma, other.sigma);
        if (larger > 0) {
            double own = other.sigma / larger;
            double its = sigma / larger;
            double weight = its * its / (own * own + its * its);
            value += weight * (other.value - value);
            sigma = own * sigma / Math.sqrt(own * own + its * its);
        }
    }

    void forget() {
        value = Double.NaN;
        sigma = Double.NaN;
    }

    boolean known() {
        return !Double.isNaN(value);
    }

    double value() {
        return value;
    }

    double sigma() {
        return sigma;
    }

    long atNanos() {
        return atNanos;
    }
}
