package org.slugpeak.bridge.testkit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BiConsumer;
import org.slugpeak.bridge.source.Carrier;
import org.slugpeak.bridge.source.CarrierEvent;
import org.slugpeak.core.session.LinkDetail;

/**
 * A carrier without a wire: events come at the times that the script says, and waiting moves the test's clock. What is sent
 * goes to the script, which may answer. One thread at a time.
 */
public final class ScriptedCarrier implements Carrier {

    private record Planned(CarrierEvent event, int order) {}

    private final ManualTicker ticker;
    private final PriorityQueue<Planned> planned = new PriorityQueue<>(
            Comparator.comparingLong((Planned each) -> each.event().tNanos()).thenComparingInt(Planned::order));
    private final List<String> sent = new ArrayList<>();
    private BiConsumer<ScriptedCarrier, String> answerer = (carrier, message) -> {};
    private int order;
    private boolean closed;

    /**
     * A port that was just opened.
     *
     * @param ticker is moved by waiting
     */
    public ScriptedCarrier(ManualTicker ticker) {
        this.ticker = ticker;
        plan(new CarrierEvent.Opened(ticker.nowNanos()));
    }

    /**
     * Answers what is sent.
     *
     * @param script is given this carrier and each message
     * @return this
     */
    public ScriptedCarrier answeredBy(BiConsumer<ScriptedCarrier, String> script) {
        answerer = script;
        return this;
    }

    /**
     * Text that comes some time from now.
     *
     * @param afterNanos from now
     * @param text with its line ends
     * @return this
     */
    public ScriptedCarrier text(long afterNanos, String text) {
        return bytes(afterNanos, text.getBytes(StandardCharsets.ISO_8859_1));
    }

    /**
     * Bytes that come some time from now.
     *
     * @param afterNanos from now
     * @param bytes as they are
     * @return this
     */
    public ScriptedCarrier bytes(long afterNanos, byte[] bytes) {
        return plan(new CarrierEvent.Bytes(ticker.nowNanos() + afterNanos, bytes));
    }

    /**
     * The plug is pulled some time from now.
     *
     * @param afterNanos from now
     * @return this
     */
    public ScriptedCarrier lost(long afterNanos) {
        return plan(new CarrierEvent.Lost(ticker.nowNanos() + afterNanos, LinkDetail.Cause.PULLED));
    }

    /**
     * The port is open again some time from now.
     *
     * @param afterNanos from now
     * @return this
     */
    public ScriptedCarrier opened(long afterNanos) {
        return plan(new CarrierEvent.Opened(ticker.nowNanos() + afterNanos));
    }

    /**
     * What was sent.
     *
     * @return in order
     */
    public List<String> sent() {
        return List.copyOf(sent);
    }

    /**
     * Whether it was closed.
     *
     * @return true after {@link #close}
     */
    public boolean isClosed() {
        return closed;
    }

    @Override
    public String name() {
        return "scripted port";
    }

    @Override
    public Optional<CarrierEvent> await(long waitNanos) {
        long nowNanos = ticker.nowNanos();
        Planned next = planned.peek();
        if (next == null || next.event().tNanos() - nowNanos > waitNanos) {
            ticker.advance(waitNanos);
            return Optional.empty();
        }
        planned.remove();
        ticker.advance(Math.max(0, next.event().tNanos() - nowNanos));
        return Optional.of(next.event());
    }

    @Override
    public void send(byte[] bytes) {
        String message = new String(bytes, StandardCharsets.ISO_8859_1);
        sent.add(message);
        answerer.accept(this, message);
    }

    @Override
    public void close() {
        closed = true;
    }

    private ScriptedCarrier plan(CarrierEvent event) {
        planned.add(new Planned(event, order++));
        return this;
    }
}
