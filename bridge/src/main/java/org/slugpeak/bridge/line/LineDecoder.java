package org.slugpeak.bridge.line;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.source.Decoder;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.LineSplitter;
import org.slugpeak.bridge.source.Outlet;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;

/** Readings of an instrument that prints lines of text. One thread at a time. */
final class LineDecoder implements Decoder {

    /** A board that is still starting does not hear. */
    private static final long ASK_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final LineFormat format;
    private final LineSplitter splitter = new LineSplitter();
    private final Known known;
    private final DataLines dataLines;
    private OptionalLong dueNanos = OptionalLong.empty();

    LineDecoder(LineFormat format) {
        this.format = format;
        this.known = new Known(format);
        this.dataLines = new DataLines(format, known);
    }

    @Override
    public void begin(long nowNanos, Outlet out) {
        splitter.begin();
        known.begin();
        dataLines.begin();
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
        if (!known.started()) {
            greet(nowNanos, out);
        }
        ask(nowNanos, out);
    }

    @Override
    public boolean settled() {
        return known.settled();
    }

    @Override
    public Measurand measurand() {
        return known.measurand();
    }

    @Override
    public String description() {
        return known.description();
    }

    @Override
    public OptionalDouble scaleSpan() {
        return known.scale().span();
    }

    private void greet(long nowNanos, Outlet out) {
        say(format.asking().greeting(), nowNanos, out);
    }

    private void ask(long nowNanos, Outlet out) {
        say(format.asking().question(), nowNanos, out);
    }

    private void say(String words, long nowNanos, Outlet out) {
        if (!words.isEmpty()) {
            out.send(format.asking().bytes(words));
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
                out.garbled(Garble.CHECKSUM, "checksum missing or wrong: " + Quote.of(line));
            }
        } else if (isStart(payload.get())) {
            start(payload.get(), arrivalNanos, out);
        } else if (whole || format.checksum().isPresent()) {
            if (dataLines.take(payload.get(), arrivalNanos, out)) {
                askNext(arrivalNanos, out);
            }
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
        if (known.settled() && !line.unit().equals(known.measurand().unit())) {
            out.refused("the instrument now reads '" + line.unit() + "', not '"
                    + known.measurand().unit() + "': start slugpeak again");
            return;
        }
        if (line.restarted()) {
            dataLines.restarted();
        }
        if (known.heardReading() && line.restarted()) {
            out.notice(arrivalNanos, LinkNotice.RESTARTED, board(line, true));
        } else if (known.heardReading() && !line.scale().equals(known.scale())) {
            out.notice(arrivalNanos, LinkNotice.RANGE_CHANGED, board(line, false));
        }
        known.started(line);
    }

    private void askNext(long nowNanos, Outlet out) {
        if (format.asking().intervalNanos() == 0) {
            ask(nowNanos, out);
        } else {
            dueNanos = OptionalLong.of(nowNanos + format.asking().intervalNanos());
        }
    }

    private static LinkDetail board(StartLine line, boolean restarted) {
        return new LinkDetail.Board(SafeText.line(line.name()), restarted);
    }
}
