package org.slugpeak.bridge.file;

import java.util.Optional;
import org.slugpeak.bridge.decimal.Decimal;
import org.slugpeak.core.reading.Condition;

/** Reads one line of data at a time. One thread at a time. */
final class Row {

    private final Decimal decimal;
    private final boolean comma;
    private final Fields fields;

    private byte[] bytes = new byte[0];
    private double value;
    private Condition condition = Condition.NO_VALUE;
    private long nanos;

    Row(boolean decimalComma, Fields fields) {
        this.comma = decimalComma;
        this.decimal = new Decimal(decimalComma ? ',' : '.');
        this.fields = fields;
    }

    /** Reads a line; gives what is wrong with it, or an empty text. */
    String read(byte[] line, int from, int to, Layout layout) {
        bytes = line;
        Columns columns = layout.columns();
        int present = fields.split(line, from, to, layout.separator());
        if (present != columns.count()) {
            return wrongCount(present, columns.count(), layout.separator());
        }
        String problem = readValue(columns.value());
        Optional<Columns.Time> time = columns.time();
        return problem.isEmpty() && time.isPresent() ? readTime(time.get()) : problem;
    }

    double value() {
        return value;
    }

    Condition condition() {
        return condition;
    }

    /** What the column of times says, if there is one. */
    long nanos() {
        return nanos;
    }

    /** Whether both columns hold whole numbers, so that the line might as well be one number with a decimal comma. */
    boolean mayBeDecimalComma(Layout layout) {
        return layout.separator() == ',' && layout.columns().count() == 2 && isWhole(0) && isWhole(1);
    }

    private String readValue(int index) {
        int start = fields.start(index);
        int end = fields.end(index);
        if (decimal.read(bytes, start, end)) {
            double number = decimal.toDouble();
            if (Double.isInfinite(number)) {
                return quoted(index) + " is beyond the range of numbers";
            }
            condition = Special.of(number);
            value = condition.hasValue() ? number : 0;
            return "";
        }
        if (Special.isOverRange(bytes, start, end)) {
            condition = Condition.OVER_RANGE;
            value = 0;
            return "";
        }
        return isEmpty(index) ? "the reading is missing" : notANumber(index);
    }

    private String readTime(Columns.Time column) {
        if (!decimal.read(bytes, fields.start(column.index()), fields.end(column.index()))) {
            return isEmpty(column.index()) ? "the time is missing" : notANumber(column.index());
        }
        nanos = decimal.toNanos(column.unitExponent());
        return "";
    }

    private String notANumber(int index) {
        int start = fields.start(index);
        int end = fields.end(index);
        if (Special.isNotFinite(bytes, start, end)) {
            return quoted(index) + " is not a finite number";
        }
        boolean otherPoint = new Decimal(comma ? '.' : ',').read(bytes, start, end);
        return quoted(index) + " is not a number" + (otherPoint ? pointAdvice() : "");
    }

    private String wrongCount(int present, int expected, byte separator) {
        String problem = present + (present == 1 ? " column" : " columns") + " where " + expected
                + (expected == 1 ? " is expected" : " are expected");
        boolean numbers = decimal.read(bytes, fields.start(0), fields.end(0));
        return separator == ',' && numbers ? problem + pointAdvice() : problem;
    }

    private String pointAdvice() {
        return comma ? ": with --decimal-comma numbers are written 1,25" : ": for decimal commas use --decimal-comma";
    }

    private boolean isEmpty(int index) {
        return fields.start(index) == fields.end(index);
    }

    private boolean isWhole(int index) {
        return decimal.read(bytes, fields.start(index), fields.end(index)) && decimal.isWhole();
    }

    private String quoted(int index) {
        return "'" + Excerpt.of(bytes, fields.start(index), fields.end(index)) + "'";
    }
}
