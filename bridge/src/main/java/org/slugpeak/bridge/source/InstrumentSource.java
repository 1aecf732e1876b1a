package org.slugpeak.bridge.source;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/**
 * Readings of an instrument: any {@link Carrier} of bytes with any {@link Decoder}, a clock for time-outs, and a watch over
 * the link. Loses and finds the instrument again without ending. One thread at a time; everything but the carrier's own
 * waiting happens in the thread that polls.
 */
public final class InstrumentSource implements ReadingSource {

    /** The first line is thrown away, as it may be half a line: a slow meter needs two to be heard. */
    private static final long FIRST_PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(5);

    private final Carrier carrier;
    private final Decoder decoder;
    private final Ticker ticker;
    private final LinkWatch watch = new LinkWatch(FIRST_PATIENCE_NANOS, LinkDetail.Sender.METER);
    private final Backlog backlog = new Backlog();
    private Optional<String> refusal = Optional.empty();
    private String saidOfSetting = "";
    private boolean linked;
    private boolean closed;

    /**
     * Joins the two axes.
     *
     * @param carrier is closed with this source
     * @param decoder belongs to this source from now on
     * @param ticker the clock of the carrier's events
     */
    public InstrumentSource(Carrier carrier, Decoder decoder, Ticker ticker) {
        this.carrier = carrier;
        this.decoder = decoder;
        this.ticker = ticker;
    }

    /**
     * Waits until the instrument has said what it measures. What comes meanwhile is kept for the first poll.
     *
     * @param patienceNanos how long to wait at most
     * @return whether it has
     * @throws BridgeException where the instrument refused what the user asked for
     */
    public boolean settle(long patienceNanos) throws BridgeException {
        long endNanos = ticker.nowNanos() + patienceNanos;
        long leftNanos = patienceNanos;
        while (!decoder.settled() && leftNanos > 0 && !Thread.currentThread().isInterrupted()) {
            pass(leftNanos, backlog);
            leftNanos = endNanos - ticker.nowNanos();
        }
        return decoder.settled();
    }

    /**
     * The width of the instrument's scale.
     *
     * @return from one end to the other, in the unit of the {@link #measurand}; empty where nobody knows it
     */
    public OptionalDouble scaleSpan() {
        return decoder.scaleSpan();
    }

    /**
     * What was last found wrong while nobody listened.
     *
     * @return one line; empty where nothing was
     */
    public Optional<String> trouble() {
        return backlog.trouble();
    }

    @Override
    public Measurand measurand() {
        return decoder.measurand();
    }

    @Override
    public SourceDescription description() {
        return new SourceDescription.Instrument(SafeText.line(decoder.description()));
    }

    @Override
    public Progress poll(long waitNanos, SourceListener listener) throws BridgeException {
        if (backlog.replayTo(listener)) {
            return Progress.MORE;
        }
        return pass(waitNanos, listener) ? Progress.MORE : Progress.IDLE;
    }

    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        byte[] farewell = decoder.farewell();
        if (linked && farewell.length > 0) {
            carrier.send(farewell);
        }
        carrier.close();
    }

    private boolean pass(long waitNanos, SourceListener listener) throws BridgeException {
        Optional<CarrierEvent> event = carrier.await(untilNextDue(waitNanos));
        event.ifPresent(each -> each.match(new Handler(listener)));
        long nowNanos = ticker.nowNanos();
        if (linked && nanosUntil(decoder.dueNanos(), nowNanos) == 0) {
            decoder.due(nowNanos, new SourceOutlet(nowNanos, listener));
        }
        boolean stale = decoder.settled() && watch.check(nowNanos, listener);
        if (refusal.isPresent()) {
            throw new BadConfiguration(carrier.name() + ": " + refusal.get());
        }
        return event.isPresent() || stale;
    }

    private long untilNextDue(long waitNanos) {
        long nowNanos = ticker.nowNanos();
        long wait = decoder.settled() ? Math.min(waitNanos, nanosUntil(watch.staleAtNanos(), nowNanos)) : waitNanos;
        return linked ? Math.min(wait, nanosUntil(decoder.dueNanos(), nowNanos)) : wait;
    }

    private static long nanosUntil(OptionalLong due, long nowNanos) {
        return due.isPresent() ? Math.max(0, due.getAsLong() - nowNanos) : Long.MAX_VALUE;
    }

    private final class Handler implements CarrierEvent.Matcher {

        private final SourceListener listener;

        Handler(SourceListener listener) {
            this.listener = listener;
        }

        @Override
        public void opened(CarrierEvent.Opened event) {
            linked = true;
            watch.opened(event.tNanos());
            decoder.begin(event.tNanos(), new SourceOutlet(event.tNanos(), listener));
        }

        @Override
        public void bytes(CarrierEvent.Bytes event) {
            SourceOutlet outlet = new SourceOutlet(event.tNanos(), listener);
            decoder.decode(event.bytes(), event.bytes().length, event.tNanos(), outlet);
        }

        @Override
        public void lost(CarrierEvent.Lost event) {
            linked = false;
            watch.lost(event.tNanos(), event.detail(), listener);
        }
    }

    private final class SourceOutlet implements Outlet {

        private final long nowNanos;
        private final SourceListener listener;

        SourceOutlet(long nowNanos, SourceListener listener) {
            this.nowNanos = nowNanos;
            this.listener = listener;
        }

        @Override
        public void remark(Untimed what) {
            listener.remark(what);
        }

        @Override
        public void reading(Reading reading) {
            saidOfSetting = reading.condition().isTrusted() ? "" : saidOfSetting;
            watch.reading(reading, nowNanos, listener);
        }

        @Override
        public void garbled(Garble kind, String problem) {
            if (kind != Garble.SET_OTHERWISE || !problem.equals(saidOfSetting)) {
                listener.garbled(carrier.name(), kind, SafeText.line(problem));
            }
            saidOfSetting = kind == Garble.SET_OTHERWISE ? problem : saidOfSetting;
        }

        @Override
        public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
            listener.notice(tNanos, notice, detail);
        }

        @Override
        public void send(byte[] bytes) {
            carrier.send(bytes);
        }

        @Override
        public void refused(String message) {
            refusal = Optional.of(SafeText.line(message));
        }
    }
}
