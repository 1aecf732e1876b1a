package org.slugpeak.core.curve;

/**
 * A figure and how well it is known. Immutable; any thread may use it.
 *
 * @param value in its own unit
 * @param sigma one standard deviation, in the same unit; 0 or more
 */
public record Estimate(double value, double sigma) {

    /**
     * The same in another unit.
     *
     * @param factor that turns one into the other
     * @return a copy
     */
    public Estimate times(double factor) {
        return new Estimate(value * factor, sigma * Math.abs(factor));
    }
}
