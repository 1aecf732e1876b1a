package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** Measuring leaves nothing behind for the garbage collector. */
class AllocationTest {

    private static final int MOST_BYTES_FOR_TEN_SECONDS = 4096;

    private double sink;

    @Test
    void onceWarmNothingIsAllocatedPerBlock() {
        double rateHz = 48_000;
        double[] samples = Signal.at(rateHz)
                .sine(412, 0.1, 0)
                .hum(50, 0.05, 2)
                .noise(0.01, 1)
                .seconds(10);
        AudioMeter meter = new AudioMeter(rateHz, MeterSettings.defaults(), (frame, level, condition) -> sink += level);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        meter.take(samples, 0, samples.length);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < samples.length; i += 480) {
            meter.take(samples, i, i + 480);
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        // A thousand blocks went in; the virtual machine's own book-keeping is some hundred bytes.
        assertEquals(0, allocated / MOST_BYTES_FOR_TEN_SECONDS, () -> allocated + " bytes");
    }
}
