package org.slugpeak.core.peak;

/**
 * One-sigma scale of a stream of deviations: a running mean of absolute values, each winsorised at twice the present
 * scale, so that outliers count little and nothing is squared. The memory grows from nothing to its final length, as a
 * plain mean does.
 *
 * <p>Winsorised scale: Huber, Robust Statistics, 1981, chapter 5. For a normal distribution the mean of min(|x|, 2 sigma)
 * is sqrt(2/pi) (1 - exp(-2)) + 4 Q(2) = 0.7809 sigma.
 */
final class Spread {

    private static final double CLIP = 2;
    private static final double TO_SIGMA = 1 / 0.780_9;

    /** A deviation beyond this many times the scale would not have been expected at all. */
    private static final double UNEXPECTED = 4;
    /** So many unexpected deviations in a row, and the scale is learnt anew. */
    private static final int NEW_REGIME = 8;

    private static final int FEW = 3;

    private final double memory;
    private double sigma;
    private double seen;
    private double weight;
    private int unexpected;

    /** @param memory how many deviations are remembered once warm */
    Spread(double memory) {
        this.memory = memory;
    }

    /**
     * Takes one deviation.
     *
     * @param deviation any sign, expectation zero
     * @param floor a deviation up to this is never cut: lets the scale leave zero
     */
    void add(double deviation, double floor) {
        double size = Math.abs(deviation);
        unexpected = size > Math.max(UNEXPECTED * sigma, floor) ? unexpected + 1 : 0;
        if (unexpected >= NEW_REGIME) {
            unsettle();
        }
        if (seen < memory) {
            seen++;
            weight = 1 / seen;
        }
        double most = seen <= FEW ? size : Math.max(CLIP * sigma, floor);
        sigma += (TO_SIGMA * Math.min(size, most) - sigma) * weight;
    }

    double sigma() {
        return sigma;
    }

    double seen() {
        return seen;
    }

    /** What comes next may have another scale altogether. */
    void unsettle() {
        unexpected = 0;
        seen = 0;
    }

    void rescale(double factor) {
        sigma *= factor;
    }
}
