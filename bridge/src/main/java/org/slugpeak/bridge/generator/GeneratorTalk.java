package org.slugpeak.bridge.generator;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Predicate;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.CarrierEvent;
import org.slugpeak.bridge.source.Garble;
import org.slugpeak.bridge.source.LineSplitter;
import org.slugpeak.bridge.time.Ticker;

/** Lines to a generator and lines back. Nothing waits longer than it is told. One thread at a time. */
final class GeneratorTalk {

    private static final long NOT_AT_ALL_NANOS = 0;

    private final Carrier carrier;
    private final Ticker ticker;
    private final String lineEnd;
    private final LineSplitter splitter = new LineSplitter();
    private final Deque<String> lines = new ArrayDeque<>();
    private final Hearing hearing = new Hearing();
    private boolean linked = true;
    private int openings;

    GeneratorTalk(Carrier carrier, Ticker ticker, String lineEnd) {
        this.carrier = carrier;
        this.ticker = ticker;
        this.lineEnd = lineEnd;
    }

    String address() {
        return carrier.name();
    }

    /** Whether the line is there now, as far as is known without waiting. */
    boolean isLinked() {
        hear(NOT_AT_ALL_NANOS);
        return linked;
    }

    /** How often the line was opened: where it grows, a generator may have been switched off meanwhile. */
    int openings() {
        return openings;
    }

    /** Waits until the line is open. */
    void awaitOpening(long patienceNanos) {
        if (openings == 0 || !linked) {
            await(patienceNanos);
        }
    }

    /** Waits for whatever happens next on the line. */
    void await(long waitNanos) {
        carrier.await(waitNanos).ifPresent(event -> event.match(hearing));
    }

    void send(String line) {
        hear(NOT_AT_ALL_NANOS);
        lines.clear(); // what comes late answers nobody any more
        carrier.send((line + lineEnd).getBytes(StandardCharsets.US_ASCII));
    }

    /** Sends, and gives the next line that fits; empty where patience ended or the line went. An echo fits nothing. */
    Optional<String> exchange(String sent, Predicate<String> fits, long patienceNanos) {
        send(sent);
        long endNanos = ticker.nowNanos() + patienceNanos;
        // A line that was just lost is not waited for.
        while (linked && ticker.nowNanos() < endNanos && !Thread.currentThread().isInterrupted()) {
            await(endNanos - ticker.nowNanos());
            while (!lines.isEmpty()) {
                String line = lines.remove();
                if (!line.equalsIgnoreCase(sent) && fits.test(line)) {
                    return Optional.of(line);
                }
            }
        }
        return Optional.empty();
    }

    private void hear(long waitNanos) {
        for (Optional<CarrierEvent> event = carrier.await(waitNanos);
                event.isPresent();
                event = carrier.await(waitNanos)) {
            event.get().match(hearing);
        }
    }

    void close() {
        carrier.close();
    }

    private final class Hearing implements CarrierEvent.Matcher, LineSplitter.Taker {

        @Override
        public void opened(CarrierEvent.Opened event) {
            splitter.begin();
            linked = true;
            openings++;
        }

        @Override
        public void bytes(CarrierEvent.Bytes event) {
            splitter.accept(event.bytes(), event.bytes().length, this);
        }

        @Override
        public void lost(CarrierEvent.Lost event) {
            linked = false;
        }

        @Override
        public void line(String text, boolean whole) {
            lines.add(text);
        }

        @Override
        public void garbled(Garble kind, String problem) {
            // Noise on the line: the answer is waited for until patience ends, and then asked for once more.
        }
    }
}
