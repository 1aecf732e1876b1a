package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import org.slugpeak.core.reading.Condition;

/** What instruments and programs write in place of a number. */
final class Special {

    // SCPI-1999 volume 1, section 7.2.1: 9.9E37 stands for infinity, 9.91E37 for not a number.
    private static final double SCPI_INFINITY = 9.9e37;
    private static final double SCPI_NOT_A_NUMBER = 9.91e37;

    private static final int LONGEST_WORD = 16;
    private static final Set<String> OVER_RANGE =
            Set.of("OL", "0L", "OVL", "OVLD", "OVER", "OVERLOAD", "OVERRANGE", "OVERFLOW", "OVF");
    private static final Set<String> NOT_FINITE = Set.of("NAN", "INF", "INFINITY");

    private Special() {}

    /** What a number stands for; {@link Condition#OK} for itself. */
    static Condition of(double value) {
        double magnitude = Math.abs(value);
        if (magnitude == SCPI_INFINITY) {
            return Condition.OVER_RANGE;
        }
        return magnitude == SCPI_NOT_A_NUMBER ? Condition.NO_VALUE : Condition.OK;
    }

    /** Whether a word stands for a reading beyond the range, such as {@code OL}, {@code -0.L} or {@code over-range}. */
    static boolean isOverRange(byte[] bytes, int from, int to) {
        return OVER_RANGE.contains(word(bytes, from, to));
    }

    /** Whether a word is what a program writes for a result that is no number. */
    static boolean isNotFinite(byte[] bytes, int from, int to) {
        return NOT_FINITE.contains(word(bytes, from, to));
    }

    /** Whether a word stands in place of a number, so that it is no name of a column. */
    static boolean isWord(byte[] bytes, int from, int to) {
        return isOverRange(bytes, from, to) || isNotFinite(bytes, from, to);
    }

    private static String word(byte[] bytes, int from, int to) {
        if (to - from > LONGEST_WORD) {
            return "";
        }
        return new String(bytes, from, to - from, StandardCharsets.US_ASCII)
                .toUpperCase(Locale.ROOT)
                .replaceAll("[-+. _]", "");
    }
}
