package org.slugpeak.bridge.file;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.core.reading.Measurand;

/**
 * Where a line has its time and its reading. Immutable.
 *
 * @param count how many columns every line has
 * @param value index of the column of readings
 * @param time column of times, if there is one
 * @param measurand what the readings are
 * @param label name of the column of readings; empty without a header line
 */
record Columns(int count, int value, Optional<Time> time, Measurand measurand, String label) {

    /**
     * The column of times.
     *
     * @param index of the column
     * @param unitExponent decimal exponent of its unit in nanoseconds
     */
    record Time(int index, int unitExponent) {}

    static final Columns OF_ONE_VALUE = new Columns(1, 0, Optional.empty(), Measurand.UNKNOWN, "");

    /** A line without a header: {@code value} or {@code seconds,value}. */
    static Columns unnamed(int count, String where) throws BadInput {
        return switch (count) {
            case 1 -> OF_ONE_VALUE;
            case 2 -> new Columns(2, 1, Optional.of(new Time(0, 9)), Measurand.UNKNOWN, "");
            default ->
                throw new BadInput(where + " has " + count
                        + " columns: put a header line above it that names them, for example 'seconds,volts',"
                        + " or use --decimal-comma if its numbers are written 1,25");
        };
    }

    /** What a header line says. */
    static Columns named(List<String> names, String where) throws BadInput {
        if (names.size() == 1) {
            return single(names.get(0), where);
        }
        for (int i = 0; i < names.size(); i++) {
            OptionalInt exponent = ColumnName.of(names.get(i)).timeExponent();
            if (exponent.isPresent()) {
                int value = i == 0 ? 1 : 0;
                String label = names.get(value).strip();
                Time time = new Time(i, exponent.getAsInt());
                return new Columns(
                        names.size(),
                        value,
                        Optional.of(time),
                        ColumnName.of(label).measurand(),
                        label);
            }
        }
        throw new BadInput(where + " begins with '" + Excerpt.of(names.get(0))
                + "', which is neither a number nor the name of a time column: name the columns,"
                + " for example 'seconds,volts' or 'ms,volts', or give one column of readings");
    }

    private static Columns single(String name, String where) throws BadInput {
        ColumnName column = ColumnName.of(name);
        if (column.timeExponent().isPresent()) {
            throw new BadInput(
                    where + " names a time column and no column of readings: add one, for example 'seconds,volts'");
        }
        return new Columns(1, 0, Optional.empty(), column.measurand(), name.strip());
    }
}
