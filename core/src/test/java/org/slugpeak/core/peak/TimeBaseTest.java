package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeBaseTest {

    private static final long MILLI = 1_000_000;

    private final TimeBase time = new TimeBase();

    @ParameterizedTest
    @ValueSource(longs = {2, 20, 100, 500})
    void readingsThatComeAloneLieAtTheirStamps(long millis) {
        for (int i = 0; i < 100; i++) {
            assertFalse(time.accept(i * millis * MILLI));
            assertEquals(i * millis * MILLI, time.nanos());
        }
        assertEquals(millis / 1e3, time.intervalSeconds(), 1e-12);
    }

    /** The last of a packet lies at its stamp, the others an interval apart before it. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5, 20})
    void aPacketIsLaidOutBackwards(int size) {
        long interval = 10 * MILLI;
        for (int packet = 1; packet <= 60; packet++) {
            for (int i = 1; i <= size; i++) {
                time.accept((long) packet * size * interval);
                long due = ((packet - 1L) * size + i) * interval;
                if (packet > 3) {
                    assertTrue(Math.abs(due - time.nanos()) <= MILLI, "packet " + packet + ", reading " + i);
                }
            }
        }
        assertEquals(0.01, time.intervalSeconds(), 1e-4);
    }

    @ParameterizedTest
    @CsvSource({"10, 100", "20, 100", "2, 1000", "20, 1000"})
    void coarseStampsLeaveTheInterval(long millis, long coarseMillis) {
        long latest = Long.MIN_VALUE;
        for (int i = 0; i < 20_000 / millis; i++) {
            long stamp = i * millis / coarseMillis * coarseMillis * MILLI;
            assertFalse(time.accept(stamp));
            assertTrue(time.nanos() <= stamp, "never into the future");
            assertTrue(time.nanos() >= latest, "never backwards");
            latest = time.nanos();
        }
        assertEquals(millis / 1e3, time.intervalSeconds(), 0.05 * millis / 1e3);
    }

    @Test
    void packetsOfAnySizeLeaveTheInterval() {
        SplittableRandom random = new SplittableRandom(7);
        long reading = 0;
        for (int packet = 0; packet < 400; packet++) {
            int size = random.nextInt(1, 21);
            reading += size;
            for (int i = 0; i < size; i++) {
                time.accept(reading * 10 * MILLI + i * MILLI / 4);
            }
        }
        assertEquals(0.01, time.intervalSeconds(), 0.001);
    }

    @Test
    void aDropOutIsNoNewInterval() {
        for (long i = 0; i < 64; i++) {
            time.accept(i * 10 * MILLI);
        }
        time.accept(63L * 10 * MILLI + 900 * MILLI);
        assertEquals(0.01 * (1 + 3 / 32.0), time.intervalSeconds(), 1e-12);
    }

    @Test
    void aLongPauseIsAnInterruptionAndAShortOneIsNot() {
        for (long i = 0; i < 64; i++) {
            time.accept(i * 20 * MILLI);
        }
        assertFalse(time.accept(63L * 20 * MILLI + 999 * MILLI));
        assertTrue(time.accept(63L * 20 * MILLI + 999 * MILLI + 1001 * MILLI));
    }

    @Test
    void afterAnInterruptionReadingsLieAtTheirStampsAgain() {
        for (long i = 0; i < 64; i++) {
            time.accept(i * 20 * MILLI);
        }
        long later = 60_000 * MILLI;
        assertTrue(time.accept(later));
        assertEquals(later, time.nanos());
        assertFalse(time.accept(later + 20 * MILLI));
        assertEquals(later + 20 * MILLI, time.nanos());
    }

    @Test
    void packetsASecondApartAreNoInterruption() {
        for (long packet = 1; packet < 30; packet++) {
            for (int i = 0; i < 40; i++) {
                assertFalse(time.accept(packet * 2000 * MILLI));
            }
        }
        assertEquals(0.05, time.intervalSeconds(), 1e-3);
    }

    @Test
    void aClockThatIsSetBackGoesOnWhereItWas() {
        for (long i = 0; i < 50; i++) {
            time.accept(i * 20 * MILLI);
        }
        long setTo = -3_600_000 * MILLI;
        for (long i = 0; i < 50; i++) {
            assertFalse(time.accept(setTo + i * 20 * MILLI));
        }
        assertEquals(1.84, time.nanos() / 1e9, 0.03);
        assertEquals(setTo + 49L * 20 * MILLI, time.asRead(time.nanos()));
        assertEquals(0.02, time.intervalSeconds(), 0.005);
    }

    @Test
    void stampsThatChangePlacesAreNoClockSetBack() {
        for (long i = 0; i < 500; i++) {
            time.accept((i ^ 1L) * 20 * MILLI);
        }
        assertEquals(500 * 20, time.nanos() / (double) MILLI, 21);
        assertEquals(0.02, time.intervalSeconds(), 0.001);
    }

    @Test
    void theFarthestStampsDoNotOverflow() {
        for (long stamp : new long[] {Long.MIN_VALUE, Long.MAX_VALUE, 0, Long.MIN_VALUE, 1, 2, Long.MAX_VALUE}) {
            time.accept(stamp);
            assertTrue(time.intervalSeconds() >= 0 && time.intervalSeconds() < 1e10);
        }
    }
}
