package org.slugpeak.bridge.line;

import java.util.Optional;
import java.util.OptionalLong;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.source.RangeWatch;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

/** Makes readings of the lines that carry one. One thread at a time. */
final class DataLines {

    private final LineFormat format;
    private final Known known;
    private final InstrumentClock clock;
    private final RangeWatch rangeWatch = new RangeWatch();

    DataLines(LineFormat format, Known known) {
        this.format = format;
        this.known = known;
        this.clock = new InstrumentClock(format.time()
                .map(time -> time.wrapsAtUnits() * time.nanosPerUnit())
                .orElse(Double.POSITIVE_INFINITY));
    }

    void begin() {
        rangeWatch.begin();
        clock.begin();
    }

    /** The instrument said that its time begins again. */
    void restarted() {
        clock.begin();
    }

    /** Takes a line; true where it gave a reading. */
    boolean take(String payload, long arrivalNanos, Outlet out) {
        String[] fields = format.fields(payload);
        if (format.tag().isPresent() && !fields[0].equals(format.tag().get())) {
            if (format.checksum().isEmpty() && !known.takesAsBanner(Quote.of(payload))) {
                out.garbled(Garble.MALFORMED, "not a reading: " + Quote.of(payload));
            }
            return false;
        }
        if (!known.started()) {
            return false; // it cannot be scaled before the instrument has said how
        }
        Optional<MeterField> value = fields.length < format.fieldsNeeded()
                ? Optional.empty()
                : MeterField.parse(fields[format.valueField() - 1]);
        if (value.isEmpty()) {
            noReading(payload, fields.length, out);
            return false;
        }
        return value(value.get(), fields, payload, arrivalNanos, out);
    }

    private void noReading(String payload, int fields, Outlet out) {
        if (known.takesAsBanner(Quote.of(payload))) {
            return;
        }
        if (fields < format.fieldsNeeded()) {
            out.garbled(
                    Garble.TORN, "only " + fields + " of " + format.fieldsNeeded() + " fields: " + Quote.of(payload));
        } else {
            out.garbled(Garble.MALFORMED, "field " + format.valueField() + " is no number: " + Quote.of(payload));
        }
    }

    private boolean value(MeterField value, String[] fields, String payload, long arrivalNanos, Outlet out) {
        if (known.isForeign(value.unit())) {
            String unit = known.measurand().unit();
            out.garbled(
                    Garble.MALFORMED,
                    "the meter reads '" + value.unit() + "', not '" + unit + "': turn its switch back");
            return false;
        }
        OptionalLong tNanos = time(fields, arrivalNanos, out);
        if (tNanos.isEmpty()) {
            out.garbled(Garble.MALFORMED, "its time stamp is no number: " + Quote.of(payload));
            return false;
        }
        if (format.flags().isPresent() && format.flags().get().tellsOfSkipped(flags(fields))) {
            out.notice(tNanos.getAsLong(), LinkNotice.READINGS_SKIPPED, LinkDetail.Cause.NOT_ALL_SENT);
        }
        if (value.condition() == Condition.OK) {
            known.readingHeard(value.unit());
        }
        out.reading(reading(value, fields, tNanos.getAsLong(), out));
        return true;
    }

    private Reading reading(MeterField value, String[] fields, long tNanos, Outlet out) {
        if (rangeWatch.changed(value)) {
            out.notice(tNanos, LinkNotice.RANGE_CHANGED, LinkDetail.Cause.RANGE_TO_BE_SET);
            return Reading.without(tNanos, Condition.NO_VALUE);
        }
        Condition condition = condition(value, fields);
        double read = condition.hasValue() ? known.scale().reading(value.value()) : 0;
        return Double.isFinite(read)
                ? new Reading(tNanos, read, condition)
                : Reading.without(tNanos, Condition.OVER_RANGE);
    }

    private Condition condition(MeterField value, String[] fields) {
        if (!value.condition().hasValue()) {
            return value.condition();
        }
        Condition flagged =
                format.flags().map(flags -> flags.condition(flags(fields))).orElse(Condition.OK);
        return flagged == Condition.OK ? known.scale().condition(value.value()) : flagged;
    }

    private String flags(String[] fields) {
        return format.flags().map(flags -> fields[flags.field() - 1]).orElse("");
    }

    private OptionalLong time(String[] fields, long arrivalNanos, Outlet out) {
        if (format.time().isEmpty()) {
            return OptionalLong.of(arrivalNanos);
        }
        TimeFormat time = format.time().get();
        Optional<MeterField> stamp = MeterField.parse(fields[time.field() - 1]);
        if (stamp.isEmpty() || stamp.get().condition() != Condition.OK) {
            return OptionalLong.empty();
        }
        double stampNanos = stamp.get().value() * time.nanosPerUnit();
        if (clock.restartsWith(stampNanos, arrivalNanos)) {
            out.notice(arrivalNanos, LinkNotice.RESTARTED, LinkDetail.Cause.CLOCK_AGAIN);
        }
        return OptionalLong.of(clock.place(stampNanos, arrivalNanos));
    }
}
