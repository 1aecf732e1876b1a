package org.slugpeak.bridge.testkit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A converter board that prints lines, for a {@link BenchPort}. It sends what it is told to send, and its banner each time
 * the host opens the port. Any thread may use it.
 */
public final class LineAdc implements BenchInstrument {

    private static final long PATIENCE_SECONDS = 30;

    private final List<String> banner;
    private final List<String> heard = new CopyOnWriteArrayList<>();
    private final CountDownLatch openedOnce = new CountDownLatch(1);
    private Optional<Consumer<byte[]>> line = Optional.empty();

    private LineAdc(List<String> banner) {
        this.banner = banner;
    }

    /**
     * A board that says nothing by itself.
     *
     * @return the board
     */
    public static LineAdc silent() {
        return new LineAdc(List.of());
    }

    /**
     * A board that is reset whenever the host opens the port.
     *
     * @param lines what it prints then
     * @return the board
     */
    public static LineAdc resetOnOpen(String... lines) {
        return new LineAdc(List.of(lines));
    }

    @Override
    public synchronized void plugged(Consumer<byte[]> toHost) {
        line = Optional.of(toHost);
    }

    @Override
    public void opened() {
        banner.forEach(this::print);
        openedOnce.countDown();
    }

    @Override
    public void received(byte[] bytes) {
        heard.add(new String(bytes, StandardCharsets.ISO_8859_1));
    }

    @Override
    public synchronized void unplugged() {
        line = Optional.empty();
    }

    /**
     * Sends a line with its end.
     *
     * @param text without its end
     */
    public void print(String text) {
        send((text + "\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    /**
     * Sends bytes, if the board is plugged in.
     *
     * @param bytes as they are
     */
    public synchronized void send(byte[] bytes) {
        line.ifPresent(toHost -> toHost.accept(bytes));
    }

    /**
     * Sends lines one after the other with a pause behind each, in the caller's thread.
     *
     * @param lines without their ends
     * @param pauseMillis from line to line
     */
    public void play(List<String> lines, int pauseMillis) {
        for (String each : lines) {
            print(each);
            PseudoTerminal.pause(pauseMillis);
        }
    }

    /** Waits until a host has opened the port and the banner is out. */
    public void awaitOpened() {
        try {
            if (!openedOnce.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new AssertionError("nobody opened the port in " + PATIENCE_SECONDS + " s");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /**
     * What the host has sent so far.
     *
     * @return joined
     */
    public String heard() {
        return String.join("", heard);
    }
}
