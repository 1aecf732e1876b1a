package org.slugpeak.bridge.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.slugpeak.bridge.meter.InstrumentOptions;
import org.slugpeak.bridge.meter.InstrumentSources;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/**
 * How long a reading takes from the last byte on the serial port to the listener: a board on a pseudo-terminal prints a line
 * each 5 ms and notes when it had written it. Prints percentiles of 4000 lines after 400 that are not counted.
 */
public final class SerialLatency {

    private static final int LINES = 4_400;
    private static final int NOT_COUNTED = 400;
    private static final int PAUSE_MILLIS = 5;
    private static final long WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private SerialLatency() {}

    /**
     * Measures and prints one line.
     *
     * @param arguments none
     * @throws Exception where the bench cannot be set up
     */
    public static void main(String[] arguments) throws Exception {
        long[] sentNanos = new long[LINES];
        long[] delaysNanos = new long[LINES];
        LineAdc board = LineAdc.silent();
        Path folder = Files.createTempDirectory("slugpeak-bench");
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(board);
            InstrumentOptions options = InstrumentOptions.defaults().withMeter("value-and-time");
            try (ReadingSource source = InstrumentSources.open(port.path(), options, Ticker.system())) {
                board.awaitOpened();
                Thread sender = new Thread(() -> send(board, sentNanos), "board");
                sender.start();
                Arrivals arrivals = new Arrivals(sentNanos, delaysNanos);
                while (arrivals.count < LINES) {
                    source.poll(WAIT_NANOS, arrivals);
                }
                sender.join();
            }
        }
        Files.delete(folder);
        report(Arrays.copyOfRange(delaysNanos, NOT_COUNTED, LINES));
    }

    private static void send(LineAdc board, long[] sentNanos) {
        board.print("");
        for (int i = 0; i < LINES; i++) {
            synchronized (sentNanos) {
                board.print(i * PAUSE_MILLIS + ",1.2345");
                sentNanos[i] = System.nanoTime();
            }
            pause();
        }
    }

    private static void pause() {
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(PAUSE_MILLIS));
    }

    private static void report(long[] delaysNanos) {
        Arrays.sort(delaysNanos);
        System.out.printf(
                Locale.ROOT,
                "serial line to listener: p50 %.3f ms, p99 %.3f ms, max %.3f ms of %d lines%n",
                at(delaysNanos, 0.5),
                at(delaysNanos, 0.99),
                at(delaysNanos, 1),
                delaysNanos.length);
    }

    private static double at(long[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))] / 1e6;
    }

    private static final class Arrivals implements SourceListener {

        private final long[] sentNanos;
        private final long[] delaysNanos;
        private int count;

        Arrivals(long[] sentNanos, long[] delaysNanos) {
            this.sentNanos = sentNanos;
            this.delaysNanos = delaysNanos;
        }

        @Override
        public void reading(Reading reading) {
            long nowNanos = System.nanoTime();
            synchronized (sentNanos) {
                delaysNanos[count] = Math.max(0, nowNanos - sentNanos[count]);
            }
            count++;
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {
            System.out.println("link " + state.code() + " " + detail);
        }

        @Override
        public void garbled(String where, String problem) {
            throw new IllegalStateException(problem);
        }
    }
}
