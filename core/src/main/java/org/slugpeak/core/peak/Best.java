package org.slugpeak.core.peak;

/**
 * The highest level that was surely reached. The highest of several noisy means is too high by about one sigma (the expected
 * greatest of the three or four independent means that fit on the top of a pass); so a mean counts only less its own sigma.
 * While the reading stays at the top the mean gets longer, its sigma goes to zero and the best reaches the true level from below.
 */
final class Best {

    private static final double SELECTION_SIGMAS = 1;

    private double value = Double.NaN;
    private double sigma = Double.NaN;
    private long atNanos;

    void offer(Smoother level) {
        double sure = level.value() - SELECTION_SIGMAS * level.sigma();
        if (Double.isNaN(value) || sure > value) {
            value = sure;
            sigma = level.sigma();
            atNanos = level.middleNanos();
        }
    }

    /** Takes over another best. */
    void copy(Best other) {
        value = other.value;
        sigma = other.sigma;
        atNanos = other.atNanos;
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
