package org.slugpeak.cli.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A figure with its uncertainty, as many places as that has sense for. All methods are pure. */
public final class Uncertain {

    private static final int MOST_DIGITS = 6;

    private Uncertain() {}

    /**
     * A figure and what it is uncertain by.
     *
     * @param value in any unit
     * @param sigma one standard deviation in that unit; 0 or more
     * @return {@code 1.05 +- 0.02}: the uncertainty with one digit, or two where the first is a 1; never nil, since nothing is known
     *     to more than six digits
     */
    public static String text(double value, double sigma) {
        if (!Double.isFinite(sigma)) {
            return Significant.four(value);
        }
        double least = Math.pow(10, exponent(Math.max(Math.abs(value), sigma)) + 1 - MOST_DIGITS);
        double shown = Math.max(sigma, least);
        boolean one = shown > least && shown / Math.pow(10, exponent(shown)) < 1.95;
        int places = Math.max(0, (one ? 1 : 0) - exponent(shown));
        return rounded(value, places) + " +- " + rounded(shown, places);
    }

    private static int exponent(double value) {
        return value > 0 ? (int) Math.floor(Math.log10(value) + 1e-9) : 0;
    }

    private static String rounded(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
