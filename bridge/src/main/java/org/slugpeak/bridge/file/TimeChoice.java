package org.slugpeak.bridge.file;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Finds the column of times of one table, by its name, by how it is written, or by rising steadily. */
final class TimeChoice {

    private static final int SECONDS = TimeColumn.SECONDS;
    private static final int ROWS_ENOUGH = 3;

    /** Loggers keep an interval; a pause may be this many times as long. */
    private static final double LONGEST_STEP = 20;

    /** As seconds since 1970 these lie beyond the year 5138: they are milliseconds, and beyond the next, microseconds. */
    private static final double MILLISECONDS_FROM = 1e11;

    private static final double MICROSECONDS_FROM = 1e14;

    /** Day numbers of the years 1954 to 2119, counted as spreadsheets do, from the end of 1899. */
    private static final double FIRST_DAY = 20_000;

    private static final double LAST_DAY = 80_000;

    /** As seconds these would be written finer than a microsecond half a day after the start: no clock does that. */
    private static final int DECIMALS_OF_DAYS = 7;

    private final NumberTable table;
    private final List<ColumnName> names;

    TimeChoice(NumberTable table, List<ColumnName> names) {
        this.table = table;
        this.names = names;
    }

    /** The column that is one of times by its name or by how it is written; two columns without names are time and value. */
    Optional<TimeColumn> known() {
        for (int i = 0; i < Math.min(table.columns(), names.size()); i++) {
            if (table.isNumber(i)
                    && (names.get(i).timeExponent().isPresent() || names.get(i).isDate())) {
                return Optional.of(of(i));
            }
        }
        Optional<TimeColumn> clock = clock();
        boolean pair = names.isEmpty() && table.columns() == 2 && table.isNumber(0) && table.isNumber(1);
        return clock.isPresent() || !pair ? clock : Optional.of(of(0));
    }

    /** The columns without a name that says otherwise, whose numbers rise steadily. */
    List<Integer> rising() {
        return IntStream.range(0, table.columns())
                .filter(each -> table.columns() > 1)
                .filter(each -> table.isNumber(each)
                        && (names.isEmpty() || names.get(each).mayBeTime()))
                .filter(each -> rises(numbers(each)) && !counts(each) && !carriesUnit(each))
                .boxed()
                .toList();
    }

    private boolean carriesUnit(int index) {
        return table.column(index).stream()
                .map(cell -> NumberCell.parse(cell, table.shape().point()))
                .flatMap(Optional::stream)
                .anyMatch(cell -> cell.unit().isPresent());
    }

    /** Whether a column only counts the lines. */
    boolean counts(int index) {
        if (!names.isEmpty()
                && (names.get(index).isCounter() || !names.get(index).mayBeTime())) {
            return names.get(index).isCounter();
        }
        double[] numbers = numbers(index);
        return numbers.length >= ROWS_ENOUGH
                && IntStream.range(1, numbers.length).allMatch(i -> numbers[i] - numbers[i - 1] == 1);
    }

    /** A column that is one of times. */
    TimeColumn of(int index) {
        if (table.isTime(index)) {
            return TimeColumn.clock(index, date(index));
        }
        double[] numbers = numbers(index);
        boolean unitTold = !names.isEmpty() && !names.get(index).unit().isEmpty();
        boolean date = !names.isEmpty() && names.get(index).isDate();
        int exponent =
                names.isEmpty() ? SECONDS : names.get(index).timeExponent().orElse(SECONDS);
        if (unitTold || numbers.length == 0) {
            return date ? TimeColumn.days(index) : TimeColumn.numbers(index, exponent);
        }
        double first = Math.abs(numbers[0]);
        if (first >= MILLISECONDS_FROM) {
            return TimeColumn.numbers(index, first >= MICROSECONDS_FROM ? SECONDS - 6 : SECONDS - 3);
        }
        boolean ofSpreadsheet = first >= FIRST_DAY && first <= LAST_DAY;
        return ofSpreadsheet && (date || writtenAsDays(index))
                ? TimeColumn.days(index)
                : TimeColumn.numbers(index, exponent);
    }

    private Optional<TimeColumn> clock() {
        List<Integer> clocks = IntStream.range(0, table.columns())
                .filter(table::isTime)
                .filter(each -> first(each)
                        .flatMap(TimeText::parse)
                        .filter(it -> it.nanosOfDay().isPresent())
                        .isPresent())
                .boxed()
                .toList();
        return clocks.isEmpty() ? Optional.empty() : Optional.of(of(clocks.get(0)));
    }

    /** A column with a date alone. */
    private OptionalInt date(int clock) {
        return IntStream.range(0, table.columns())
                .filter(each -> each != clock && table.isTime(each))
                .filter(each -> first(each)
                        .flatMap(TimeText::parse)
                        .filter(it -> it.nanosOfDay().isEmpty())
                        .isPresent())
                .findFirst();
    }

    private Optional<String> first(int index) {
        return table.column(index).stream().filter(cell -> !cell.isEmpty()).findFirst();
    }

    private boolean writtenAsDays(int index) {
        return table.column(index).stream()
                .anyMatch(cell -> cell.length() - 1 - cell.indexOf(table.shape().point()) >= DECIMALS_OF_DAYS
                        && cell.indexOf(table.shape().point()) >= 0);
    }

    private double[] numbers(int index) {
        return table.column(index).stream()
                .map(cell -> NumberCell.parse(cell, table.shape().point()))
                .flatMap(Optional::stream)
                .mapToDouble(NumberCell::value)
                .toArray();
    }

    private static boolean rises(double[] numbers) {
        if (numbers.length < ROWS_ENOUGH) {
            return false;
        }
        double[] steps = IntStream.range(1, numbers.length)
                .mapToDouble(i -> numbers[i] - numbers[i - 1])
                .toArray();
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        return sorted[0] >= 0
                && sorted[steps.length / 2] > 0
                && sorted[steps.length - 1] <= LONGEST_STEP * sorted[steps.length / 2];
    }
}
