package org.slugpeak.bridge.scpi;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.source.RangeWatch;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

/** Readings of a meter's answers. One thread at a time. */
final class Answers {

    private final ScpiDialect dialect;
    private final MeterSetting setting;
    private final RangeWatch rangeWatch = new RangeWatch();
    private boolean begun;
    private long lastNanos;

    Answers(ScpiDialect dialect, MeterSetting setting) {
        this.dialect = dialect;
        this.setting = setting;
    }

    void begin() {
        rangeWatch.begin();
        begun = false;
    }

    /** An answer without what stands round its numbers. */
    Wording wording(String answer) {
        return Wording.of(answer, dialect, setting);
    }

    /** The first number of an answer; empty where it has none. */
    Optional<Reading> first(Wording answer, long tNanos) {
        return answer.numbers().stream().findFirst().flatMap(MeterField::parse).map(field -> field.at(tNanos));
    }

    /** Delivers the numbers of an answer; false where it has none, which has been said. */
    boolean deliver(String answer, long nowNanos, Outlet out) {
        Wording wording = wording(answer);
        List<MeterField> fields = fields(wording.numbers());
        if (!wording.problem().isEmpty() || fields.isEmpty()) {
            out.garbled(
                    Garble.MALFORMED,
                    wording.problem().isEmpty()
                            ? "no number in the answer '" + Wording.shortened(answer) + "'"
                            : wording.problem());
            return false;
        }
        Optional<String> foreign = foreignUnit(fields);
        if (foreign.isPresent()) {
            out.garbled(
                    Garble.MALFORMED, "the meter reads '" + foreign.get() + "', not volts: turn its switch to volts");
            return false;
        }
        long sinceNanos = begun ? lastNanos : nowNanos;
        for (int i = 0; i < fields.size(); i++) {
            long tNanos = sinceNanos + (nowNanos - sinceNanos) * (i + 1) / fields.size();
            out.reading(reading(fields.get(i), tNanos, out));
        }
        begun = true;
        lastNanos = nowNanos;
        return true;
    }

    private List<MeterField> fields(List<String> numbers) {
        List<MeterField> fields = new ArrayList<>();
        for (String each : numbers) {
            Optional<MeterField> field = MeterField.parse(each);
            if (field.isEmpty() || (!dialect.all() && !fields.isEmpty())) {
                break;
            }
            fields.add(field.get());
        }
        return fields;
    }

    private Reading reading(MeterField field, long tNanos, Outlet out) {
        if (rangeWatch.changed(field)) {
            out.notice(tNanos, LinkNotice.RANGE_CHANGED, LinkDetail.Cause.RANGE_TO_BE_ASKED_FOR);
            return Reading.without(tNanos, Condition.NO_VALUE);
        }
        return field.at(tNanos);
    }

    private static Optional<String> foreignUnit(List<MeterField> fields) {
        return fields.stream()
                .map(MeterField::unit)
                .filter(unit -> !unit.isEmpty() && !unit.equals("V"))
                .findFirst();
    }
}
