package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecentReadingsTest {

    private static final long MILLI = 1_000_000;

    private final RecentReadings recent = new RecentReadings(0.4);

    private void add(long intervalMillis, double... values) {
        for (int i = 0; i < values.length; i++) {
            recent.add(i * intervalMillis * MILLI, values[i]);
        }
    }

    @Test
    void thoseOfTheLastWhileAreKept() {
        add(50, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
        assertEquals(9, recent.size());
        assertEquals(400 * MILLI, recent.spannedNanos());
        assertEquals(11, recent.last(0));
        assertEquals(3, recent.last(8));
        assertTrue(Double.isNaN(recent.last(9)));
    }

    @Test
    void ofASlowMeterFiveAreKept() {
        add(1000, 0, 1, 2, 3, 4, 5, 6);
        assertEquals(5, recent.size());
        assertEquals(2, recent.last(4));
        assertEquals(4000 * MILLI, recent.spannedNanos());
    }

    /** Whatever the rate, and however often the store grew or began again at its start. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theyAreTheNewestOfAllInTheirOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> all = new ArrayList<>();
        long tNanos = 0;
        for (int i = 0; i < 3000; i++) {
            tNanos += random.nextLong(1, i < 1000 ? 20 * MILLI : MILLI);
            all.add(random.nextDouble());
            recent.add(tNanos, all.get(i));
            for (int back : new int[] {0, recent.size() / 2, recent.size() - 1}) {
                assertEquals(all.get(i - back), recent.last(back));
            }
        }
        assertTrue(recent.size() > 500);
    }

    @Test
    void ofAVeryFastSourceSomeFourThousandAreKept() {
        for (int i = 0; i < 20_000; i++) {
            recent.add(i * 10_000L, i);
        }
        assertEquals(4096, recent.size());
        assertEquals(19_999, recent.last(0));
        assertEquals(19_999 - 4095, recent.last(4095));
    }

    @Test
    void medianAndDeviationAreThoseOfTheBooks() {
        add(10, 5, 1, 4, 2, 3);
        assertEquals(3, recent.median());
        assertEquals(Math.sqrt(2.5), recent.standardDeviation(), 1e-12);
        recent.add(50 * MILLI, 90);
        assertEquals(3.5, recent.median());
    }

    @Test
    void tooFewHaveNone() {
        assertTrue(Double.isNaN(recent.median()));
        assertEquals(0, recent.spannedNanos());
        add(10, 1, 2);
        assertTrue(Double.isNaN(recent.standardDeviation()));
        assertEquals(1.5, recent.median());
        add(10, 3, 4, 5, 6, 7);
        assertTrue(Double.isNaN(recent.noise()));
    }

    /** Half a thousand of the newest are enough for a median. */
    @Test
    void theMedianOfManyIsThatOfTheNewest() {
        RecentReadings many = new RecentReadings(4);
        for (int i = 0; i < 2000; i++) {
            many.add(i * MILLI, i < 1600 ? 1 : 2);
        }
        assertEquals(2, many.median());
    }

    /** A median of 500 differences that overlap spreads by about 6 percent. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.01, 0", "0, 5"})
    void noiseIsItsSigmaWhateverTheSlopeAndAStep(double slope, double step) {
        RecentReadings many = new RecentReadings(10);
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 500; i++) {
            many.add(10L * i * MILLI, slope * i + (i < 250 ? 0 : step) + 0.02 * random.nextGaussian());
        }
        assertEquals(0.02, many.noise(), 0.003);
    }

    /** Sizes that are mostly small with a few large ones, mostly large, or equal, go nearest to the bounds. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.5, 0.51, 0.9, 1})
    void whatBoundsNoiseAndMedianDoesSoWhateverTheReadings(double share) {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            recent.add(
                    10L * i * MILLI,
                    random.nextDouble() < share ? random.nextInt(3) : 1 + 0.01 * random.nextGaussian());
            assertTrue(i < 4 || recent.lowest() <= recent.median());
            assertTrue(recent.size() < 8 || recent.mostNoise() >= recent.noise());
        }
        assertTrue(recent.size() >= 8);
    }

    @ParameterizedTest
    @CsvSource({"1.0, true", "1.009, true", "1.012, false", "0.992, true", "0.988, false"})
    void aLevelStandsWhereBothHalvesAgreeWithinTheShare(double second, boolean stands) {
        add(10, 1, 1, 1, 1, 1, second, second, second, second, second);
        assertEquals(stands, recent.stands(0.01));
    }

    @Test
    void aLevelStandsWhereItsScatterExplainsTheDifference() {
        add(10, 1, 1.4, 0.7, 1.2, 0.8, 1.3, 0.9, 1.1, 1.2, 0.75);
        assertTrue(recent.stands(0.001));
        recent.clear();
        add(10, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9);
        assertFalse(recent.stands(0.001), "it rises");
    }

    @Test
    void threeReadingsDoNotStand() {
        add(10, 1, 1, 1);
        assertFalse(recent.stands(0.1));
        recent.add(30 * MILLI, 1);
        assertTrue(recent.stands(0.1));
    }

    @Test
    void aClearedOneIsEmpty() {
        add(10, 1, 2, 3, 4, 5);
        recent.clear();
        assertEquals(0, recent.size());
        assertTrue(Double.isNaN(recent.last(0)));
        recent.add(7, 9);
        assertEquals(9, recent.median());
    }

    /** Three tenths of a second of a circuit that is rocked through its peak, some half widths a second. */
    private void rocked(double fromHalfWidths, double toHalfWidths) {
        for (int i = 0; i <= 15; i++) {
            double across = Math.abs(i - 7.5) / 7.5;
            double place = fromHalfWidths + (toHalfWidths - fromHalfWidths) * across;
            recent.add(i * 20L * MILLI, 1 / Math.hypot(1, place));
        }
    }

    @Test
    void theTopOfASweepStaysLevel() {
        rocked(0, 0.25);
        assertTrue(recent.stands(0.01));
        assertTrue(recent.staysLevel(0.01));
    }

    @Test
    void whereASweepIsTurnedBackTheReadingHasEqualHalvesAndStandsNowhere() {
        rocked(1, 0.75);
        assertTrue(recent.stands(0.01));
        assertFalse(recent.staysLevel(0.01));
    }
}
