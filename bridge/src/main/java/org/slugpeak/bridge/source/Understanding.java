package org.slugpeak.bridge.source;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.reading.Condition;

/**
 * How a text with readings was understood, so that a user can see whether that is right. Immutable; any thread may use it.
 *
 * @param separation what stands between its columns
 * @param decimalCommas whether the fraction of a number begins with a comma
 * @param reading the column of readings
 * @param time the column of times, where there is one
 * @param unused the other columns
 * @param times how times are written
 * @param unit of the readings; empty where none was told, and for ratios
 * @param fromDecibels whether the readings were turned from decibels into what they stand for
 * @param lines the first lines of the table, and what each came to
 */
public record Understanding(
        Separation separation,
        boolean decimalCommas,
        Column reading,
        Optional<Column> time,
        List<Column> unused,
        Times times,
        String unit,
        boolean fromDecibels,
        List<Line> lines) {

    public Understanding {
        unused = List.copyOf(unused);
        lines = List.copyOf(lines);
    }

    /** What stands between the columns. */
    public enum Separation {
        /** Nothing: there is one column. */
        NONE,
        /** Commas. */
        COMMAS,
        /** Semicolons. */
        SEMICOLONS,
        /** Tabs. */
        TABS,
        /** Any number of blanks. */
        BLANKS
    }

    /** How times are written. */
    public enum Times {
        /** There are none: the lines come at an even rate. */
        NONE,
        /** As seconds. */
        SECONDS,
        /** As milliseconds. */
        MILLISECONDS,
        /** As microseconds. */
        MICROSECONDS,
        /** As nanoseconds. */
        NANOSECONDS,
        /** As days and their fractions, as spreadsheets keep dates. */
        DAYS,
        /** As a time of day beside a column of dates. */
        DATE_AND_CLOCK,
        /** As a time of day, or a date and a time of day in one. */
        CLOCK
    }

    /**
     * A column of the text.
     *
     * @param number counted from 1
     * @param name what its header line calls it, shortened and printable; empty without a header line
     */
    public record Column(int number, Optional<String> name) {}

    /**
     * A line of the table.
     *
     * @param number counted from 1
     * @param text what is written there, shortened and printable
     * @param meaning what it came to
     */
    public record Line(long number, String text, Meaning meaning) {}

    /** What a line came to. */
    public sealed interface Meaning {

        /**
         * One case for each kind.
         *
         * @param <R> what the matcher gives back
         * @param matcher has a method for every kind
         * @return what that method gave
         */
        <R> R match(Matcher<R> matcher);

        /**
         * One method for each kind.
         *
         * @param <R> what the methods give back
         */
        interface Matcher<R> {

            /**
             * For a line that is a reading.
             *
             * @param it the reading
             * @return what the caller of {@link Meaning#match(Matcher)} gets
             */
            R read(Read it);

            /**
             * For a line that is none.
             *
             * @param it what is wrong with it
             * @return what the caller of {@link Meaning#match(Matcher)} gets
             */
            R unread(Unread it);
        }
    }

    /**
     * It is a reading.
     *
     * @param value in the unit of the readings; 0 where the condition has no value
     * @param condition of the reading
     * @param atSeconds the time that the line says; empty without a column of times
     */
    public record Read(double value, Condition condition, OptionalDouble atSeconds) implements Meaning {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.read(this);
        }
    }

    /**
     * It cannot be read.
     *
     * @param problem the error, one line
     */
    public record Unread(String problem) implements Meaning {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.unread(this);
        }
    }
}
