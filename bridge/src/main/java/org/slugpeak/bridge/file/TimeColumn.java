package org.slugpeak.bridge.file;

import java.util.OptionalInt;
import org.slugpeak.bridge.source.Understanding;

/**
 * Where a line has its time, and how it is written. Immutable.
 *
 * @param index of the column
 * @param kind how it is written
 * @param unitExponent of numbers: decimal exponent of their unit in nanoseconds
 * @param dateIndex of a column of its own for the date, where there is one
 */
record TimeColumn(int index, Kind kind, int unitExponent, OptionalInt dateIndex) {

    /** How a time is written. */
    enum Kind {
        /** As a number with a unit. */
        NUMBER,
        /** As days and their fractions, as spreadsheets keep dates. */
        DAYS,
        /** As a time of day, with a date or without. */
        CLOCK
    }

    static final int SECONDS = 9;

    private static final int MILLISECONDS = 6;
    private static final int MICROSECONDS = 3;

    static TimeColumn numbers(int index, int unitExponent) {
        return new TimeColumn(index, Kind.NUMBER, unitExponent, OptionalInt.empty());
    }

    static TimeColumn days(int index) {
        return new TimeColumn(index, Kind.DAYS, 0, OptionalInt.empty());
    }

    static TimeColumn clock(int index, OptionalInt dateIndex) {
        return new TimeColumn(index, Kind.CLOCK, 0, dateIndex);
    }

    /** What a user is told of it. */
    Understanding.Times told() {
        return switch (kind) {
            case DAYS -> Understanding.Times.DAYS;
            case CLOCK -> dateIndex.isPresent() ? Understanding.Times.DATE_AND_CLOCK : Understanding.Times.CLOCK;
            case NUMBER ->
                switch (unitExponent) {
                    case SECONDS -> Understanding.Times.SECONDS;
                    case MILLISECONDS -> Understanding.Times.MILLISECONDS;
                    case MICROSECONDS -> Understanding.Times.MICROSECONDS;
                    default -> Understanding.Times.NANOSECONDS;
                };
        };
    }

    /** The last column that a line must have for its time. */
    int last() {
        return Math.max(index, dateIndex.orElse(0));
    }
}
