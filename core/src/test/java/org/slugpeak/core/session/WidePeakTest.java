package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** Whether a peak that the gain control flattens is told from the earlier ones by its width, with a hand that nobody can rely on. */
final class WidePeakTest {

    private static final int SESSIONS = 80;

    /** Not those that the limits were chosen on. */
    private static final long FIRST_SEED = 50_000;

    /** Four peaks of a generator that is kept low. */
    private static TurnedSlugs clean(long seed) {
        TurnedSlugs slugs = new TurnedSlugs(seed);
        for (int i = 0; i < 4; i++) {
            slugs.peak(slugs.between(0.6, 1.4));
        }
        return slugs;
    }

    /** In how many sessions something is told. */
    private static long told(Function<TurnedSlugs, TurnedSlugs> next) {
        return LongStream.range(FIRST_SEED, FIRST_SEED + SESSIONS)
                .filter(seed -> !next.apply(clean(seed)).widePeaks().isEmpty())
                .count();
    }

    /** None of 200 sessions, seeds from 74,000. */
    @Test
    void aGeneratorKeptLowIsHardlyEverSuspectedHoweverTheHandTurns(TestReporter reporter) {
        long told = told(slugs -> slugs.peak(1).peak(1.2).peak(0.8).peak(1));
        reporter.publishEntry("told in " + SESSIONS + " clean sessions of 8 peaks", String.valueOf(told));
        assertTrue(told <= 1, told + " of " + SESSIONS);
    }

    /** 142 of 200 sessions, seeds from 74,000. */
    @Test
    void fiveTimesTheSignalIsToldWithinTwoPeaksInMostSessions(TestReporter reporter) {
        long told = told(slugs -> slugs.peak(5).peak(5));
        reporter.publishEntry("told within two peaks, of " + SESSIONS, String.valueOf(told));
        assertTrue(told > 0.5 * SESSIONS, told + " of " + SESSIONS);
    }

    @Test
    void aSlowHandOnACleanSignalIsNoWidePeakBecauseTheReadingStandsNoHigher() {
        TurnedSlugs slugs = new TurnedSlugs(FIRST_SEED).peak(1).peak(1).peak(1);
        assertEquals(0, slugs.slower(4).peak(1).widePeaks().size());
    }

    @Test
    void itSaysHowManyTimesAndComesOncePerAdjuster() {
        TurnedSlugs slugs =
                new TurnedSlugs(FIRST_SEED).peak(1).peak(1).peak(1).slower(1.5).peak(5);
        assertEquals(1, slugs.widePeaks().size());
        double times = slugs.widePeaks().get(0).times();
        assertTrue(times > 1.7 && times < 20, "times " + times);
    }

    @Test
    void nothingIsSaidBeforeThereAreThreePeaksToCompareWith() {
        assertEquals(
                0,
                new TurnedSlugs(FIRST_SEED)
                        .peak(1)
                        .slower(3)
                        .peak(5)
                        .widePeaks()
                        .size());
    }
}
