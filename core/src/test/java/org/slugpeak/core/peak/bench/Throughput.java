package org.slugpeak.core.peak.bench;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.SplittableRandom;
import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Condition;

/** Readings a second of processor time, and bytes allocated, once warm. */
public final class Throughput {

    private static final int READINGS = 1 << 16;
    private static final int REPEATS = 30;
    private static final int WARM_UP_ROUNDS = 4;

    private final double[] values = new double[READINGS];
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), new Ear());
    private final long intervalNanos;
    private long tNanos;

    private Throughput(double rate) {
        intervalNanos = Math.round(1e9 / rate);
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < READINGS; i++) {
            double place = 3 * Math.sin(8 * Math.PI * i / READINGS);
            values[i] = 1 / Math.hypot(1, place) + 0.0035 * Meter.gaussian(random);
        }
    }

    static void print() {
        System.out.printf("%nThroughput, one thread, processor time%n");
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (double rate : new double[] {1000, 200, 50, 3}) {
            Throughput load = new Throughput(rate);
            for (int i = 0; i < WARM_UP_ROUNDS; i++) {
                load.run(REPEATS);
            }
            long before = thread.getCurrentThreadCpuTime();
            load.run(REPEATS);
            double seconds = (thread.getCurrentThreadCpuTime() - before) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "readings stamped %4.0f/s: %5.1f million readings/s, %d bytes allocated in %d readings%n",
                    rate,
                    REPEATS * (READINGS / 1e6) / seconds,
                    load.allocated(thread),
                    REPEATS * READINGS);
        }
    }

    /**
     * Bytes allocated by this thread while a warm finder takes two million readings.
     *
     * @param rate readings per second, as stamped
     * @return bytes
     */
    public static long allocatedOnceWarm(double rate) {
        Throughput load = new Throughput(rate);
        for (int i = 0; i < WARM_UP_ROUNDS; i++) {
            load.run(REPEATS);
        }
        return load.allocated((ThreadMXBean) ManagementFactory.getThreadMXBean());
    }

    private long allocated(ThreadMXBean thread) {
        long before = thread.getCurrentThreadAllocatedBytes();
        run(REPEATS);
        return thread.getCurrentThreadAllocatedBytes() - before;
    }

    private void run(int repeats) {
        for (int repeat = 0; repeat < repeats; repeat++) {
            for (double value : values) {
                tNanos += intervalNanos;
                finder.accept(tNanos, value, Condition.OK);
            }
        }
    }
}
