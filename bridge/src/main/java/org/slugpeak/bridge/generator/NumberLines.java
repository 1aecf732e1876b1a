package org.slugpeak.bridge.generator;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How a number is set and read back. Immutable.
 *
 * @param send with <code>{number}</code> in it
 * @param digits least number of digits before the point; more than the number has are zeros in front
 * @param decimals most digits behind the point
 * @param lowest that the generator can, in the unit of the description
 * @param highest that the generator can
 * @param readBack asks for it; empty where the generator cannot tell
 * @param limits ask how far it goes; empty where only the description tells
 */
record NumberLines(
        String send,
        int digits,
        int decimals,
        double lowest,
        double highest,
        Optional<Question> readBack,
        Optional<Limits> limits) {

    static final String GAP = "{number}";

    /** A question, and what its answer looks like. */
    record Question(String ask, AnswerForm answer) {}

    /** Two questions, and what their answers look like. */
    record Limits(String askLowest, String askHighest, AnswerForm answer) {}

    NumberLines between(double low, double high) {
        return new NumberLines(send, digits, decimals, low, high, readBack, limits);
    }

    boolean reaches(double number) {
        return number >= lowest && number <= highest;
    }

    /** The number as it is sent: no more of it is set than this says. */
    BigDecimal rounded(double number) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    String plain(double number) {
        return rounded(number).stripTrailingZeros().toPlainString();
    }

    String range() {
        if (Double.isInfinite(highest)) {
            return "no lower than " + plain(lowest);
        }
        return Double.isInfinite(lowest)
                ? "no higher than " + plain(highest)
                : "from " + plain(lowest) + " to " + plain(highest);
    }

    String line(double number) {
        return send.replace(GAP, padded(rounded(number)));
    }

    private String padded(BigDecimal number) {
        BigDecimal size = number.abs();
        BigDecimal plain = size.scale() > 0 ? size.stripTrailingZeros() : size;
        String text = (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
        int before = text.contains(".") ? text.indexOf('.') : text.length();
        return (number.signum() < 0 ? "-" : "") + "0".repeat(Math.max(0, digits - before)) + text;
    }
}
