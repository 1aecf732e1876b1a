package org.slugpeak.core.receiver;

/**
 * Drift of a frequency while something warms up: {@code final (1 - exp(-t/tau))}. Immutable; any thread may use it.
 *
 * @param finalHz drift when all is warm
 * @param timeConstantSeconds positive
 */
public record WarmUp(double finalHz, double timeConstantSeconds) {

    /** No drift at all. */
    public static final WarmUp NONE = new WarmUp(0, 1);

    /**
     * The drift so far.
     *
     * @param secondsSinceCold 0 or more
     * @return hertz
     */
    public double driftHz(double secondsSinceCold) {
        return finalHz * (1 - Math.exp(-secondsSinceCold / timeConstantSeconds));
    }

    /**
     * What is still to come.
     *
     * @param fromSeconds since cold
     * @param toSeconds since cold
     * @return hertz gained between the two
     */
    public double driftBetweenHz(double fromSeconds, double toSeconds) {
        return driftHz(toSeconds) - driftHz(fromSeconds);
    }
}
