package org.slugpeak.core.reading;

/** Numbers for a person, who has no use for a minus before a zero. Stateless. */
public final class Rounded {

    private Rounded() {}

    /**
     * Fit to be written with so many decimals: what would be written as minus nothing becomes nothing.
     *
     * @param value any, in any unit; NaN stays
     * @param decimals 0 to 9
     * @return the value itself, in its unit, or 0 where all its decimals would be zeros
     */
    public static double to(double value, int decimals) {
        double half = 0.5 * Math.pow(10, -decimals);
        return Math.abs(value) < half ? 0 : value + 0.0;
    }
}
