package org.slugpeak.bridge.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class InstrumentClockTest {

    private static final long THOUSANDTH = TimeUnit.MILLISECONDS.toNanos(1);
    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);
    private static final double MICROS_32_BIT_NANOS = 4294967296.0 * 1000;

    @Test
    void theInstrumentsOwnIntervalsCountNotTheJitterOfTheLine() {
        InstrumentClock clock = new InstrumentClock(Double.POSITIVE_INFINITY);
        SplittableRandom random = new SplittableRandom(17);
        long first = clock.place(0, 5 * SECOND);
        for (long i = 1; i < 1000; i++) {
            long placed = clock.place(
                    i * 20.0 * THOUSANDTH, 5 * SECOND + i * 20 * THOUSANDTH + random.nextLong(16 * THOUSANDTH));
            assertEquals(first + i * 20 * THOUSANDTH, placed);
        }
    }

    @Test
    void aClockOf32BitsThatBeginsAgainGoesOn() {
        InstrumentClock clock = new InstrumentClock(MICROS_32_BIT_NANOS);
        double before = MICROS_32_BIT_NANOS - 10 * THOUSANDTH;
        assertEquals(SECOND, clock.place(before, SECOND));
        assertFalse(clock.restartsWith(10.0 * THOUSANDTH, SECOND + 20 * THOUSANDTH));
        assertEquals(SECOND + 20 * THOUSANDTH, clock.place(10.0 * THOUSANDTH, SECOND + 20 * THOUSANDTH));
    }

    @Test
    void aResetTiesTheClockAnewAndTimeNeverGoesBack() {
        InstrumentClock clock = new InstrumentClock(MICROS_32_BIT_NANOS);
        clock.place(100.0 * SECOND, 0);
        clock.place(110.0 * SECOND, 10 * SECOND);
        assertTrue(clock.restartsWith(0, 12 * SECOND));
        assertEquals(12 * SECOND, clock.place(0, 12 * SECOND));
        assertEquals(13 * SECOND, clock.place(1.0 * SECOND, 13 * SECOND));
    }

    @Test
    void aResetLateInTheRoundIsNotTakenForItsEnd() {
        InstrumentClock clock = new InstrumentClock(MICROS_32_BIT_NANOS);
        clock.place(0.9 * MICROS_32_BIT_NANOS, 0);
        assertTrue(clock.restartsWith(0.0, 2 * SECOND), "the end of the round is seven minutes away");
        assertEquals(2 * SECOND, clock.place(0.0, 2 * SECOND));
    }

    @Test
    void aClockThatRunsHalfAPercentFastIsNoReset() {
        InstrumentClock clock = new InstrumentClock(Double.POSITIVE_INFINITY);
        clock.place(0, 0);
        for (int i = 1; i <= 3600; i++) {
            assertFalse(clock.restartsWith(i * 1.005 * SECOND, i * SECOND));
            clock.place(i * 1.005 * SECOND, i * SECOND);
        }
    }

    @Test
    void linesThatWaitedInABufferKeepTheirTimes() {
        InstrumentClock clock = new InstrumentClock(Double.POSITIVE_INFINITY);
        clock.place(0, SECOND);
        assertEquals(SECOND + 20 * THOUSANDTH, clock.place(20.0 * THOUSANDTH, 6 * SECOND));
        assertEquals(SECOND + 40 * THOUSANDTH, clock.place(40.0 * THOUSANDTH, 6 * SECOND));
    }
}
