package org.slugpeak.core.reading;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for a person, who has no use for a minus before a zero, nor for digits that no hand can set. Stateless. */
public final class Rounded {

    private Rounded() {}

    /**
     * To so many significant digits, half up.
     *
     * @param value finite, in any unit
     * @param digits 1 or more
     * @return in its unit
     */
    public static double toDigits(double value, int digits) {
        return new BigDecimal(value, new MathContext(digits)).doubleValue();
    }

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
