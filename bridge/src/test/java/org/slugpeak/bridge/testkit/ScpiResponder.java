package org.slugpeak.bridge.testkit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A {@link ScpiMeter} on the far end of a {@link BenchPort}. It can be told to hold its answers back, as a slow meter does.
 * Any thread may use it.
 */
public final class ScpiResponder implements BenchInstrument {

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);

    private final ScpiMeter meter;
    private final StringBuilder received = new StringBuilder();
    private final StringBuilder heldBack = new StringBuilder();
    private Optional<Consumer<byte[]>> line = Optional.empty();
    private boolean holding;

    private ScpiResponder(ScpiMeter meter) {
        this.meter = meter;
    }

    /**
     * With a given meter.
     *
     * @param meter belongs to the responder from now on
     * @return the instrument
     */
    public static ScpiResponder of(ScpiMeter meter) {
        return new ScpiResponder(meter);
    }

    /**
     * An invented meter that answers {@code READ?} with the given numbers in turn, the last one for ever.
     *
     * @param answers as it writes them
     * @return the instrument
     */
    public static ScpiResponder reading(String... answers) {
        return of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-450,0,1.07").answering("READ?", answers));
    }

    @Override
    public synchronized void plugged(Consumer<byte[]> toHost) {
        line = Optional.of(toHost);
        received.setLength(0);
    }

    @Override
    public synchronized void received(byte[] bytes) {
        received.append(new String(bytes, StandardCharsets.US_ASCII));
        int end = received.indexOf("\n");
        while (end >= 0) {
            String message = received.substring(0, end).strip();
            received.delete(0, end + 1);
            meter.take(message).ifPresent(answer -> say(answer + "\r\n"));
            end = received.indexOf("\n");
        }
        notifyAll();
    }

    @Override
    public synchronized void unplugged() {
        line = Optional.empty();
    }

    /**
     * What it was sent.
     *
     * @return in order
     */
    public synchronized List<String> messages() {
        return meter.messages();
    }

    /** Keeps all answers back until {@link #letGo}. */
    public synchronized void hold() {
        holding = true;
    }

    /** Sends what was kept back. */
    public synchronized void letGo() {
        holding = false;
        String kept = heldBack.toString();
        heldBack.setLength(0);
        say(kept);
    }

    /**
     * Waits until a message has come.
     *
     * @param message as it was sent, without its end
     */
    public synchronized void awaitMessage(String message) {
        long endNanos = System.nanoTime() + PATIENCE_NANOS;
        while (!meter.messages().contains(message)) {
            long leftMillis = TimeUnit.NANOSECONDS.toMillis(endNanos - System.nanoTime());
            if (leftMillis <= 0) {
                throw new AssertionError("'" + message + "' never came, only " + meter.messages());
            }
            try {
                wait(leftMillis);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError("interrupted", e);
            }
        }
    }

    private void say(String text) {
        if (holding) {
            heldBack.append(text);
        } else {
            line.ifPresent(toHost -> toHost.accept(text.getBytes(StandardCharsets.US_ASCII)));
        }
    }
}
