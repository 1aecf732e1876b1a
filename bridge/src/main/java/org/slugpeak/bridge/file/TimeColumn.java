package org.slugpeak.bridge.file;

import java.util.OptionalInt;

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

    /** In words. */
    String words() {
        return switch (kind) {
            case DAYS -> "day numbers of a spreadsheet";
            case CLOCK -> dateIndex.isPresent() ? "date and time of day" : "time of day, or date and time";
            case NUMBER ->
                switch (unitExponent) {
                    case SECONDS -> "seconds";
                    case MILLISECONDS -> "milliseconds";
                    case MICROSECONDS -> "microseconds";
                    default -> "nanoseconds";
                };
        };
    }

    /** The last column that a line must have for its time. */
    int last() {
        return Math.max(index, dateIndex.orElse(0));
    }
}
