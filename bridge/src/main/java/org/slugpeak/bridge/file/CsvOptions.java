package org.slugpeak.bridge.file;

import java.util.OptionalDouble;

/**
 * What the user may say about a text with readings; a rate out of range is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param decimalComma whether numbers are written {@code 1,25} and columns are separated by semicolons or tabs
 * @param readingsPerSecond the rate of a text without a time column, above 0 and at most 1e6; empty for 50 in a file, and
 *     for the time of arrival on standard input
 * @param stepped whether each reading is the settled value of one step of a turn: without a stated rate they count as one a
 *     second, and on standard input a line is one value or a {@link org.slugpeak.bridge.source.TypedWord}
 */
public record CsvOptions(boolean decimalComma, OptionalDouble readingsPerSecond, boolean stepped) {

    /** The rate that a file without a time column and without a stated rate is taken to have. */
    public static final double DEFAULT_READINGS_PER_SECOND = 50;

    private static final double FASTEST = 1e6;

    public CsvOptions {
        if (readingsPerSecond.isPresent()
                && !(readingsPerSecond.getAsDouble() > 0 && readingsPerSecond.getAsDouble() <= FASTEST)) {
            throw new IllegalArgumentException("the rate must be above 0 and at most 1000000 readings a second, not "
                    + readingsPerSecond.getAsDouble());
        }
    }

    /**
     * Decimal points, columns separated by commas or tabs, no stated rate.
     *
     * @return the usual options
     */
    public static CsvOptions defaults() {
        return new CsvOptions(false, OptionalDouble.empty(), false);
    }

    /**
     * The same with decimal commas or without.
     *
     * @param comma whether numbers are written {@code 1,25}
     * @return a copy
     */
    public CsvOptions withDecimalComma(boolean comma) {
        return new CsvOptions(comma, readingsPerSecond, stepped);
    }

    /**
     * The same with a stated rate.
     *
     * @param perSecond above 0 and at most 1e6
     * @return a copy
     */
    public CsvOptions withReadingsPerSecond(double perSecond) {
        return new CsvOptions(decimalComma, OptionalDouble.of(perSecond), stepped);
    }

    /**
     * The same for settled values or for readings that follow a turning hand.
     *
     * @param steps whether each reading is one step of a turn
     * @return a copy
     */
    public CsvOptions withStepped(boolean steps) {
        return new CsvOptions(decimalComma, readingsPerSecond, steps);
    }
}
