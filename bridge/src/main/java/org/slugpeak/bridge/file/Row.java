package org.slugpeak.bridge.file;

import java.util.Optional;
import org.slugpeak.bridge.decimal.Decimal;
import org.slugpeak.core.reading.Condition;

/** Reads one line of data at a time. One thread at a time. */
final class Row {

    private final TextLayout layout;
    private final char point;
    private final Decimal decimal;
    private final Fields fields = new Fields();
    private final TimeReader time;

    private double value;
    private Condition condition = Condition.NO_VALUE;

    Row(TextLayout layout) {
        this.layout = layout;
        this.point = layout.shape().point();
        this.decimal = new Decimal(point);
        this.time = new TimeReader(point);
    }

    /** Reads a line; gives what is wrong with it, or an empty text. */
    String read(byte[] line, int from, int to) {
        Columns columns = layout.columns();
        int present = fields.split(line, from, to, layout.shape().separator());
        if (present == 0) {
            return "its quotes do not match";
        }
        if (present > columns.count() || present < columns.needed()) {
            return wrongCount(present, columns.count());
        }
        String problem = readValue(columns.value());
        return problem.isEmpty() && columns.time().isPresent()
                ? readTime(columns.time().get())
                : problem;
    }

    double value() {
        return value;
    }

    Condition condition() {
        return condition;
    }

    /** What the column of times says, if there is one. */
    long nanos() {
        return time.nanos();
    }

    /** Whether both columns hold whole numbers, so that the line might as well be one number with a decimal comma. */
    boolean mayBeDecimalComma() {
        return layout.shape().equals(new Shape(Separator.COMMAS, '.'))
                && !layout.named()
                && layout.columns().count() == 2
                && isWhole(0)
                && isWhole(1);
    }

    /** Whether the second column is written as no whole number is: {@code 02}. */
    boolean isWrittenAsFraction() {
        return fields.end(1) - fields.start(1) > 1 && fields.bytes()[fields.start(1)] == '0';
    }

    /** The line as one number with a decimal comma. */
    String asOneNumber() {
        return fields.text(0) + "." + fields.text(1);
    }

    private String readValue(int index) {
        byte[] bytes = fields.bytes();
        int start = fields.start(index);
        int end = fields.end(index);
        if (decimal.read(bytes, start, end)) {
            return accept(index, decimal.toDouble());
        }
        if (Special.isOverRange(bytes, start, end)) {
            condition = Condition.OVER_RANGE;
            value = 0;
            return "";
        }
        if (start == end) {
            return "the reading is missing";
        }
        Optional<NumberCell> cell = NumberCell.parse(fields.text(index), point);
        return cell.isPresent() ? readWithUnit(index, cell.get()) : notANumber(index);
    }

    private String readWithUnit(int index, NumberCell cell) {
        Optional<ReadingUnit> told = layout.columns().unit();
        if (cell.unit().isEmpty()) {
            return accept(index, cell.value());
        }
        if (told.isEmpty()) {
            return notANumber(index);
        }
        if (!told.get().base().equals(cell.unit().get().base())) {
            return quoted(index) + " has another unit than the lines before";
        }
        return accept(index, cell.unit().get().inUnitOf(told.get(), cell.value()));
    }

    private String accept(int index, double number) {
        if (Double.isInfinite(number)) {
            return quoted(index) + " is beyond the range of numbers";
        }
        condition = Special.of(number);
        double read = layout.columns().unit().map(unit -> unit.reading(number)).orElse(number);
        value = condition.hasValue() ? read : 0;
        return Double.isInfinite(value) ? quoted(index) + " is beyond the range of numbers" : "";
    }

    private String readTime(TimeColumn column) {
        if (time.read(fields, column)) {
            return "";
        }
        return isEmpty(column.index()) ? "the time is missing" : notATime(column);
    }

    private String notATime(TimeColumn column) {
        return column.kind() == TimeColumn.Kind.CLOCK
                ? quoted(column.index()) + " is no time of day"
                : notANumber(column.index());
    }

    private String notANumber(int index) {
        byte[] bytes = fields.bytes();
        int start = fields.start(index);
        int end = fields.end(index);
        if (Special.isNotFinite(bytes, start, end)) {
            return quoted(index) + " is not a finite number";
        }
        boolean otherPoint = new Decimal(point == ',' ? '.' : ',').read(bytes, start, end);
        return quoted(index) + " is not a number" + (otherPoint ? pointAdvice() : "");
    }

    private String wrongCount(int present, int expected) {
        String problem = present + (present == 1 ? " column" : " columns") + " where " + expected
                + (expected == 1 ? " is expected" : " are expected");
        boolean numbers = decimal.read(fields.bytes(), fields.start(0), fields.end(0));
        return layout.shape().separator() == Separator.COMMAS && numbers ? problem + pointAdvice() : problem;
    }

    private String pointAdvice() {
        return point == ','
                ? ": with --decimal-comma numbers are written 1,25"
                : ": for decimal commas use --decimal-comma";
    }

    private boolean isEmpty(int index) {
        return fields.start(index) == fields.end(index);
    }

    private boolean isWhole(int index) {
        return decimal.read(fields.bytes(), fields.start(index), fields.end(index)) && decimal.isWhole();
    }

    private String quoted(int index) {
        return "'" + Excerpt.of(fields.bytes(), fields.start(index), fields.end(index)) + "'";
    }
}
