package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The count of samples against the computer's clock. */
class CaptureClockTest {

    private static final int BLOCK = 480;
    private static final double RATE_HZ = 48_000;

    /** Feeds blocks whose true time runs at {@code speed} and whose arrival is late by up to {@code jitterNanos}. */
    private static long[] run(int blocks, double speed, long jitterNanos, int lossAt, long lossNanos) {
        SplittableRandom random = new SplittableRandom(2);
        CaptureClock clock = new CaptureClock(RATE_HZ, 0);
        long lost = 0;
        long shift = 0;
        int losses = 0;
        for (int i = 1; i <= blocks; i++) {
            long time = Math.round(i * BLOCK / RATE_HZ * 1e9 * speed) + (i > lossAt ? lossNanos : 0);
            if (clock.arrived(BLOCK, time + random.nextLong(jitterNanos + 1))) {
                lost += clock.lostNanos();
                shift += clock.shiftNanos();
                losses += clock.lostNanos() > 0 ? 1 : 0;
            }
        }
        return new long[] {losses, lost, shift};
    }

    @Test
    void jitterOfThirtyMillisecondsIsNoLoss() {
        long[] seen = run(60_000, 1, 30_000_000L, Integer.MAX_VALUE, 0);
        assertEquals(0, seen[0]);
        assertEquals(0.0, (double) seen[2], 2_000_000.0);
    }

    @Test
    void aCrystalThatIsAHundredPartsInAMillionOffIsFollowed() {
        long[] seen = run(60_000, 1.0001, 100_000L, Integer.MAX_VALUE, 0);
        assertEquals(0, seen[0]);
        assertEquals(60_000_000.0, (double) seen[2], 1_000_000.0);
    }

    @Test
    void aLossIsSeenOnceWithItsLength() {
        long[] seen = run(3000, 1, 1_000_000L, 1234, 150_000_000L);
        assertEquals(1, seen[0]);
        assertEquals(150_000_000.0, (double) seen[1], 1_000_000.0);
    }

    @Test
    void aStreamThatComesFasterThanItSoundsMovesNothing() {
        long[] seen = run(3000, 0.001, 0, Integer.MAX_VALUE, 0);
        assertEquals(0, seen[0]);
        assertEquals(0, seen[2]);
    }
}
