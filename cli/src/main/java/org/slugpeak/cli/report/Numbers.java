package org.slugpeak.cli.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/** Numbers and times as the report writes them. */
final class Numbers {

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Numbers() {}

    /** Empty for what is no number. */
    static Optional<Double> parsed(String text) {
        try {
            return Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        BigDecimal exact = BigDecimal.valueOf(value).round(new MathContext(9)).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }

    static String fourDigits(double value) {
        return Double.isFinite(value)
                ? plain(BigDecimal.valueOf(value).round(FOUR_DIGITS).doubleValue())
                : "";
    }

    static String withUnit(double value, String unit) {
        return Double.isFinite(value) ? (fourDigits(value) + " " + unit).strip() : "";
    }

    static String clock(long nanos) {
        long seconds = Math.round(nanos / 1e9);
        return seconds < 3600
                ? String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60)
                : String.format(Locale.ROOT, "%d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
    }

    static String kHz(double hz) {
        return plain(Math.rint(hz) / 1e3) + " kHz";
    }

    static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 3) + "...";
    }
}
