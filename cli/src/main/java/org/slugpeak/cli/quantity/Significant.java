package org.slugpeak.cli.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers to so many significant digits, without idle zeros and without an exponent. */
public final class Significant {

    private Significant() {}

    /**
     * To four digits.
     *
     * @param value finite
     * @return for example {@code 3.2}, {@code 50}, {@code 0.4217}
     */
    public static String four(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
