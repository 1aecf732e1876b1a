package org.slugpeak.core.curve;

/**
 * What lies between two points of equal response. Immutable; any thread may use it.
 *
 * @param lowHz lower edge, Hz
 * @param highHz upper edge, Hz
 */
public record Passband(double lowHz, double highHz) {

    /**
     * How wide it is.
     *
     * @return Hz
     */
    public double widthHz() {
        return highHz - lowHz;
    }

    /**
     * Its middle.
     *
     * @return Hz
     */
    public double centreHz() {
        return (lowHz + highHz) / 2;
    }
}
