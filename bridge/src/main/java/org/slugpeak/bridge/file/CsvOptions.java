package org.slugpeak.bridge.file;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.word.Refused;

/**
 * What the user may say about a text with readings; a rate out of range is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param decimalComma whether numbers are written {@code 1,25}, whatever else they might mean
 * @param readingsPerSecond the rate of a text without a time column, above 0 and at most 1e6; empty for 50 in a file, and
 *     for the time of arrival on standard input
 * @param valueColumn name or number, counted from 1, of the column of readings; empty to find it
 * @param timeColumn name or number of the column of times, or {@code none}; empty to find it
 * @param unit unit of the numbers where the text tells none: {@code V}, {@code mV}, {@code dBV}, ...; one that is not known is
 *     refused with an {@link IllegalArgumentException}
 * @param stepped whether each reading is the settled value of one step of a turn: without a stated rate they count as one a
 *     second, and on standard input a line is one value or a {@link org.slugpeak.bridge.source.TypedWord}
 */
public record CsvOptions(
        boolean decimalComma,
        OptionalDouble readingsPerSecond,
        Optional<String> valueColumn,
        Optional<String> timeColumn,
        Optional<String> unit,
        boolean stepped) {

    /** The rate that a file without a time column and without a stated rate is taken to have. */
    public static final double DEFAULT_READINGS_PER_SECOND = 50;

    private static final double FASTEST = 1e6;

    public CsvOptions {
        if (readingsPerSecond.isPresent()
                && !(readingsPerSecond.getAsDouble() > 0 && readingsPerSecond.getAsDouble() <= FASTEST)) {
            throw new IllegalArgumentException("the rate must be above 0 and at most 1000000 readings a second, not "
                    + readingsPerSecond.getAsDouble());
        }
        if (unit.isPresent() && ReadingUnit.of(unit.get()).isEmpty()) {
            throw new IllegalArgumentException(noUnit(unit.get()));
        }
    }

    private static String noUnit(String unit) {
        return "the unit must be V, mV, uV, dBV, dBu, dBm, dB, dBFS or another of a reading, not " + unit;
    }

    /**
     * A unit that somebody wrote.
     *
     * @param unit as written
     * @return the same
     * @throws Refused where readings have no such unit
     */
    public static String knownUnit(String unit) throws Refused {
        if (ReadingUnit.of(unit).isEmpty()) {
            throw new Refused(noUnit(unit));
        }
        return unit;
    }

    /**
     * Nothing said: everything is found in the text.
     *
     * @return the usual options
     */
    public static CsvOptions defaults() {
        return new CsvOptions(
                false, OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    /**
     * The same with decimal commas or without.
     *
     * @param comma whether numbers are written {@code 1,25}
     * @return a copy
     */
    public CsvOptions withDecimalComma(boolean comma) {
        return new CsvOptions(comma, readingsPerSecond, valueColumn, timeColumn, unit, stepped);
    }

    /**
     * The same with a stated rate.
     *
     * @param perSecond above 0 and at most 1e6
     * @return a copy
     */
    public CsvOptions withReadingsPerSecond(double perSecond) {
        return new CsvOptions(decimalComma, OptionalDouble.of(perSecond), valueColumn, timeColumn, unit, stepped);
    }

    /**
     * The same with stated columns.
     *
     * @param value name or number of the column of readings; empty to find it
     * @param time name or number of the column of times, or {@code none}; empty to find it
     * @return a copy
     */
    public CsvOptions withColumns(Optional<String> value, Optional<String> time) {
        return new CsvOptions(decimalComma, readingsPerSecond, value, time, unit, stepped);
    }

    /**
     * The same with a stated unit.
     *
     * @param symbol as it is written behind a number
     * @return a copy
     */
    public CsvOptions withUnit(String symbol) {
        return new CsvOptions(decimalComma, readingsPerSecond, valueColumn, timeColumn, Optional.of(symbol), stepped);
    }

    /**
     * The same for settled values or for readings that follow a turning hand.
     *
     * @param steps whether each reading is one step of a turn
     * @return a copy
     */
    public CsvOptions withStepped(boolean steps) {
        return new CsvOptions(decimalComma, readingsPerSecond, valueColumn, timeColumn, unit, steps);
    }
}
