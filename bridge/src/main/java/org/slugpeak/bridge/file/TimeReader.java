package org.slugpeak.bridge.file;

import java.util.Optional;
import org.slugpeak.bridge.decimal.Decimal;

/** Reads the times of one text. A time of day that goes back by more than half a day is past midnight. One thread at a time. */
final class TimeReader {

    private final Decimal decimal;
    private long nanos;
    private long days;
    private long lastOfDay = -1;

    TimeReader(char point) {
        this.decimal = new Decimal(point);
    }

    /** Reads the time of a line that was cut; false where it is none. */
    boolean read(Fields fields, TimeColumn column) {
        if (column.kind() == TimeColumn.Kind.CLOCK) {
            return clock(fields, column);
        }
        if (!decimal.read(fields.bytes(), fields.start(column.index()), fields.end(column.index()))) {
            return false;
        }
        nanos = column.kind() == TimeColumn.Kind.DAYS
                ? Math.round(decimal.toDouble() * TimeText.DAY_NANOS)
                : decimal.toNanos(column.unitExponent());
        return true;
    }

    /** What was read: nanoseconds, or {@link Decimal#OUT_OF_RANGE}. */
    long nanos() {
        return nanos;
    }

    private boolean clock(Fields fields, TimeColumn column) {
        String text = fields.text(column.index());
        if (column.dateIndex().isPresent()) {
            text = fields.text(column.dateIndex().getAsInt()) + " " + text;
        }
        Optional<TimeText> time = TimeText.parse(text);
        if (time.isEmpty() || time.get().nanosOfDay().isEmpty()) {
            return false;
        }
        long ofDay = time.get().nanosOfDay().getAsLong();
        if (lastOfDay - ofDay > TimeText.DAY_NANOS / 2) {
            days++;
        }
        lastOfDay = ofDay;
        nanos = time.get().epochDay().orElse(days) * TimeText.DAY_NANOS + ofDay;
        return true;
    }
}
