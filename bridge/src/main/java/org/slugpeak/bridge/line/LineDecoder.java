package org.slugpeak.bridge.line;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.LineSplitter;
import org.slugpeak.bridge.source.LinkNotice;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.source.RangeWatch;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;

/** Readings of an instrument that prints lines of text. One thread at a time. */
final class LineDecoder implements Decoder {

    /** A board that is still starting does not hear. */
    private static final long ASK_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final int LONGEST_QUOTE = 40;

    private final LineFormat format;
    private final LineSplitter splitter = new LineSplitter();
    private final RangeWatch rangeWatch = new RangeWatch();
    private final InstrumentClock clock;

    private Scale scale;
    private Measurand measurand;
    private String description;
    private boolean settled;
    private boolean heardReading;
    private boolean started;
    private OptionalLong dueNanos = OptionalLong.empty();

    LineDecoder(LineFormat format) {
        this.format = format;
        this.scale = format.scale();
        this.measurand = format.measurand();
        this.description = format.title();
        this.settled = format.start().isEmpty() && !measurand.unit().isEmpty();
        this.clock = new InstrumentClock(format.time()
                .map(time -> time.wrapsAtUnits() * time.nanosPerUnit())
                .orElse(Double.POSITIVE_INFINITY));
    }

    @Override
    public void begin(long nowNanos, Outlet out) {
        splitter.begin();
        rangeWatch.begin();
        clock.begin();
        heardReading = false;
        started = format.start().isEmpty();
        greet(nowNanos, out);
        ask(nowNanos, out);
    }

    @Override
    public void decode(byte[] bytes, int length, long arrivalNanos, Outlet out) {
        splitter.accept(bytes, length, new LineSplitter.Taker() {
            @Override
            public void line(String text, boolean whole) {
                take(text, whole, arrivalNanos, out);
            }

            @Override
            public void garbled(Garble kind, String problem) {
                out.garbled(kind, problem);
            }
        });
    }

    @Override
    public OptionalLong dueNanos() {
        return dueNanos;
    }

    @Override
    public void due(long nowNanos, Outlet out) {
        dueNanos = OptionalLong.empty();
        if (!started) {
            greet(nowNanos, out);
        }
        ask(nowNanos, out);
    }

    @Override
    public boolean settled() {
        return settled;
    }

    @Override
    public Measurand measurand() {
        return measurand;
    }

    @Override
    public String description() {
        return description;
    }

    private void greet(long nowNanos, Outlet out) {
        if (!format.asking().greeting().isEmpty()) {
            out.send(format.asking().bytes(format.asking().greeting()));
            dueNanos = OptionalLong.of(nowNanos + ASK_AGAIN_NANOS);
        }
    }

    private void ask(long nowNanos, Outlet out) {
        if (!format.asking().question().isEmpty()) {
            out.send(format.asking().bytes(format.asking().question()));
            dueNanos = OptionalLong.of(nowNanos + ASK_AGAIN_NANOS);
        }
    }

    private void take(String line, boolean whole, long arrivalNanos, Outlet out) {
        if (format.comment().isPresent() && line.startsWith(format.comment().get())) {
            return;
        }
        Optional<String> payload =
                format.checksum().isPresent() ? format.checksum().get().payload(line) : Optional.of(line);
        if (payload.isEmpty()) {
            if (whole) {
                out.garbled(Garble.CHECKSUM, "checksum missing or wrong: " + quote(line));
            }
        } else if (isStart(payload.get())) {
            start(payload.get(), arrivalNanos, out);
        } else if (whole || format.checksum().isPresent()) {
            data(payload.get(), arrivalNanos, out);
        }
    }

    private boolean isStart(String payload) {
        return format.start().isPresent()
                && payload.startsWith(format.start().get().startsWith());
    }

    private void start(String payload, long arrivalNanos, Outlet out) {
        StartLine.Outcome outcome = StartLine.read(format.start().orElseThrow(), payload);
        if (outcome.otherVersion()) {
            out.refused("the instrument " + outcome.problem());
        } else if (outcome.line().isEmpty()) {
            out.garbled(Garble.MALFORMED, outcome.problem());
        } else {
            accept(outcome.line().get(), arrivalNanos, out);
        }
    }

    private void accept(StartLine line, long arrivalNanos, Outlet out) {
        if (settled && !line.unit().equals(measurand.unit())) {
            out.refused("the instrument now reads '" + line.unit() + "', not '" + measurand.unit()
                    + "': start slugpeak again");
            return;
        }
        if (line.restarted()) {
            clock.begin();
        }
        if (heardReading && line.restarted()) {
            out.notice(arrivalNanos, LinkNotice.RESTARTED, line.name() + " was reset and has started anew");
        } else if (heardReading && !line.scale().equals(scale)) {
            out.notice(arrivalNanos, LinkNotice.RANGE_CHANGED, line.name() + " has changed its range");
        }
        scale = line.scale();
        measurand = new Measurand(format.measurand().quantity(), line.unit());
        description = line.name();
        started = true;
        settled = true;
    }

    private void data(String payload, long arrivalNanos, Outlet out) {
        String[] fields = format.fields(payload);
        if (format.tag().isPresent() && !fields[0].equals(format.tag().get())) {
            if (format.checksum().isEmpty()) {
                out.garbled(Garble.MALFORMED, "not a reading: " + quote(payload));
            }
            return;
        }
        if (!started) {
            return; // it cannot be scaled before the instrument has said how
        }
        Optional<MeterField> value = fields.length < format.fieldsNeeded()
                ? Optional.empty()
                : MeterField.parse(fields[format.valueField() - 1]);
        if (value.isEmpty()) {
            noReading(payload, fields.length, out);
        } else {
            value(value.get(), fields, payload, arrivalNanos, out);
        }
    }

    private void noReading(String payload, int fields, Outlet out) {
        if (fields < format.fieldsNeeded()) {
            out.garbled(Garble.TORN, "only " + fields + " of " + format.fieldsNeeded() + " fields: " + quote(payload));
        } else if (heardReading) {
            out.garbled(Garble.MALFORMED, "field " + format.valueField() + " is no number: " + quote(payload));
        } else {
            description = format.title() + ", says " + quote(payload);
        }
    }

    private void value(MeterField value, String[] fields, String payload, long arrivalNanos, Outlet out) {
        String unit = format.measurand().unit();
        if (!value.unit().isEmpty()
                && !unit.isEmpty()
                && format.start().isEmpty()
                && !value.unit().equals(unit)) {
            out.garbled(
                    Garble.MALFORMED, "the meter reads '" + value.unit() + "', not '" + unit + "': turn its switch");
            return;
        }
        OptionalLong tNanos = time(fields, arrivalNanos, out);
        if (tNanos.isEmpty()) {
            out.garbled(Garble.MALFORMED, "its time stamp is no number: " + quote(payload));
            return;
        }
        settle(value);
        out.reading(reading(value, fields, tNanos.getAsLong(), out));
        heardReading = true;
        askNext(arrivalNanos, out);
    }

    private void settle(MeterField value) {
        if (!settled && value.condition() == Condition.OK) {
            boolean volts = value.unit().equals("V") && measurand.equals(Measurand.UNKNOWN);
            measurand = new Measurand(volts ? "voltage" : measurand.quantity(), value.unit());
            settled = true;
        }
    }

    private Reading reading(MeterField value, String[] fields, long tNanos, Outlet out) {
        if (rangeWatch.changed(value)) {
            out.notice(tNanos, LinkNotice.RANGE_CHANGED, "the meter has changed its range: fix the range on the meter");
            return Reading.without(tNanos, Condition.NO_VALUE);
        }
        Condition condition = condition(value, fields);
        double read = condition.hasValue() ? scale.reading(value.value()) : 0;
        return Double.isFinite(read)
                ? new Reading(tNanos, read, condition)
                : Reading.without(tNanos, Condition.OVER_RANGE);
    }

    private Condition condition(MeterField value, String[] fields) {
        if (!value.condition().hasValue()) {
            return value.condition();
        }
        Condition flagged = format.flags()
                .map(flags -> flags.condition(fields[flags.field() - 1]))
                .orElse(Condition.OK);
        return flagged == Condition.OK ? scale.condition(value.value()) : flagged;
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
            out.notice(arrivalNanos, LinkNotice.RESTARTED, "the instrument was reset: its clock has begun again");
        }
        return OptionalLong.of(clock.place(stampNanos, arrivalNanos));
    }

    private void askNext(long nowNanos, Outlet out) {
        if (format.asking().question().isEmpty()) {
            return;
        }
        if (format.asking().intervalNanos() == 0) {
            ask(nowNanos, out);
        } else {
            dueNanos = OptionalLong.of(nowNanos + format.asking().intervalNanos());
        }
    }

    private static String quote(String text) {
        return "'" + (text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "...") + "'";
    }
}
