package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Watched.below;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.HuntGoal.Stay;

/** Levels and sigmas are in parts of the best; the dwell is 2 s, the longest stay 3.5 s. */
class DwellTest {

    private static final double DWELL_SECONDS = 2;
    private static final double LONGEST_SECONDS = 3.5;

    private final Told told = new Told();
    private final Watched level = new Watched();
    private final Best best = new Best(level.blocks.front);
    private final Dwell dwell = new Dwell(level.sight, best, Math.round(1e9 * DWELL_SECONDS), told);

    private Stay stay = Stay.WAITS;
    private double staySeconds;

    /** The best was reached now, and is known to a sigma. */
    private void best(double sigma) {
        best.recall(new Best.Mark(Watched.VOLTS, sigma * Watched.VOLTS, level.nowNanos()));
    }

    /** Stays at a level that depends on the seconds of the stay, until something comes of it. */
    private Stay stayAt(DoubleUnaryOperator levelAtSeconds) {
        long since = level.nowNanos();
        stay = Stay.WAITS;
        level.by(t -> {
            if (stay == Stay.WAITS) {
                stay = dwell.stay(t, since);
                staySeconds = (t - since) / 1e9;
            }
        });
        level.follow(LONGEST_SECONDS + 1, levelAtSeconds);
        level.by(t -> {});
        return stay;
    }

    private Stay restAt(double missingDb) {
        level.rest(3, below(missingDb));
        return stayAt(t -> below(missingDb));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.5, 0, 0.14})
    void aSteadyLevelAtTheBestIsHeldWhenTheDwellIsOver(double missingDb) {
        best(0);
        assertEquals(Stay.HELD, restAt(missingDb));
        assertEquals(DWELL_SECONDS, staySeconds, 1e-9);
        assertEquals(1 - below(missingDb), dwell.loss() / Watched.VOLTS, 1e-9);
        assertEquals(List.of(), told.words());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.16, 1, 6})
    void aHandThatStopsShortIsToldWhatIsMissingAfterTheLongestStay(double missingDb) {
        best(0);
        assertEquals(Stay.SHORT, restAt(missingDb));
        assertEquals(LONGEST_SECONDS, staySeconds, 1e-9);
        assertEquals(List.of("stopped-short"), told.words());
        assertEquals(missingDb, told.first("stopped-short").value(), 1e-6);
        assertEquals(1 - below(missingDb), dwell.loss() / Watched.VOLTS, 1e-9);
    }

    @Test
    void nothingComesOfALevelThatRises() {
        best(0);
        assertEquals(Stay.WAITS, stayAt(t -> 0.98 + 0.004 * t));
    }

    /** Twelve decibels a minute. */
    @Test
    void nothingComesOfALevelThatFallsFasterThanASetDrifts() {
        best(0);
        assertEquals(Stay.WAITS, stayAt(t -> below(0.2 * t)));
    }

    /** The hand comes to rest in the first quarter of the stay. */
    @Test
    void theFirstQuarterOfTheDwellDoesNotCount() {
        best(0);
        level.rest(3, 0.9);
        assertEquals(Stay.HELD, stayAt(t -> t < 0.45 ? 0.9 + 0.1 * t / 0.45 : 1));
        assertEquals(DWELL_SECONDS, staySeconds, 0.3);
    }

    /** A sigma of 1 percent of the best: two of it are more than the 0.15 dB (1.7 percent) that may be missing. */
    @Nested
    class WhereNoiseLeavesItOpen {

        private Stay restMissing(double part) {
            level.rest(3, 1 - part);
            return stayAt(t -> 1 - part);
        }

        /** Two sigma of 0.43 percent are a quarter of what may be missing. */
        @ParameterizedTest
        @CsvSource({
            "0.002, 0.02, HELD, 2",
            "0.002, 0.022, SHORT, 3.5",
            "0.0025, 0.011, HELD, 2",
            "0.0025, 0.013, SHORT, 3.5"
        })
        void aQuarterOfItIsLeftToNoiseAndMoreIsNot(double sigma, double missing, Stay expected, double seconds) {
            best(sigma);
            assertEquals(expected, restMissing(missing));
            assertEquals(seconds, staySeconds, 1e-9);
        }

        @Test
        void theLongestStayHasToMissNothing() {
            best(0.01);
            assertEquals(Stay.HELD, restMissing(-0.0005));
            assertEquals(LONGEST_SECONDS, staySeconds, 1e-9);
            assertEquals(Stay.SHORT, restMissing(0.0005));
        }

        @Test
        void halfASigmaMoreMayBeMissingEachTimeThatItWasInVain() {
            best(0.01);
            assertEquals(Stay.SHORT, restMissing(0.004));
            assertEquals(Stay.HELD, restMissing(0.004));
            assertEquals(Stay.SHORT, restMissing(0.009));
            assertEquals(Stay.HELD, restMissing(0.009));
            dwell.restart();
            assertEquals(Stay.SHORT, restMissing(0.004));
        }
    }

    @Nested
    class WhereTheSetDrifts {

        /** Falls from the best on, by so much a minute, for so long; then the hand is back and stays. */
        private Stay driftFor(double seconds, double dbAMinute) {
            best(0);
            level.follow(seconds, t -> below(dbAMinute * t / 60));
            return stayAt(t -> below(dbAMinute * (seconds + t) / 60));
        }

        @ParameterizedTest
        @CsvSource({"15, 1", "10, 2"})
        void aBestThatDriftedAwayIsLoweredByWhatIsMissing(double seconds, double dbAMinute) {
            assertEquals(Stay.HELD, driftFor(seconds, dbAMinute));
            assertEquals(LONGEST_SECONDS, staySeconds, 1e-9);
            assertEquals(List.of("best-aged"), told.words());
            // The longest mean that fits into three quarters of the stay takes 2.56 s.
            double missingDb = dbAMinute / 60 * (seconds + LONGEST_SECONDS - 1.28);
            assertEquals(missingDb, told.first("best-aged").value(), 0.003);
            assertEquals(below(missingDb), best.value() / Watched.VOLTS, 0.000_3);
        }

        /** The hand stopped a tenth short; the set has lost twice as much since. */
        @Test
        void aDriftExplainsNoMoreThanItHasTaken() {
            best(0);
            level.follow(10, t -> below(0.1 + t / 60));
            assertEquals(Stay.SHORT, stayAt(t -> below(0.1 + (10 + t) / 60)));
            assertEquals(List.of("stopped-short"), told.words());
            assertEquals(Watched.VOLTS, best.value());
        }

        /** Two thousandths of noise leave the speed of the drift unsure by a seventh. */
        @Test
        void aDriftInNoiseExplainsWhatItMayHaveTaken() {
            Gauss gauss = new Gauss(1);
            level.rest(5, 1);
            best(0);
            level.follow(15, t -> below(t / 60) + 0.002 * gauss.next());
            assertEquals(Stay.HELD, stayAt(t -> below((15 + t) / 60) + 0.002 * gauss.next()));
            assertEquals(List.of("best-aged"), told.words());
        }

        /**
         * A best that is unsure by a fifth of a percent may be too high by two of that. A quarter of a percent, what drifts away in half of the
         * mean over the stay, is counted too much.
         */
        @ParameterizedTest
        @CsvSource({"0.006, HELD", "0.007, SHORT"})
        void twoSigmaOfTheBestMayBeMissingBesides(double besides, Stay expected) {
            best(0.002);
            level.follow(15, t -> below(t / 60) - besides);
            assertEquals(expected, stayAt(t -> below((15 + t) / 60) - besides));
        }

        /**
         * To and fro by half a thousandth, which makes two means of 1.28 s unsure by 0.0002 together. In the fifteen times as long since the
         * best that has become 0.003, twice of which may be missing.
         */
        @ParameterizedTest
        @CsvSource({"0.004, HELD", "0.0085, SHORT"})
        void howUnsureItsSpeedIsCountsForTheWholeTimeSinceTheBest(double besides, Stay expected) {
            ToAndFro noise = new ToAndFro(0.000_5);
            best(0);
            level.follow(15, t -> below(t / 60) - besides + noise.next());
            assertEquals(expected, stayAt(t -> below((15 + t) / 60) - besides + noise.next()));
        }

        /** In noise that hides the movement but not what was lost. */
        @ParameterizedTest
        @CsvSource({"2.5, HELD", "3.5, SHORT"})
        void whatFallsFasterIsNoDrift(double dbAMinute, Stay expected) {
            ToAndFro noise = new ToAndFro(0.006);
            best(0);
            level.follow(15, t -> below(dbAMinute * t / 60) + noise.next());
            assertEquals(expected, stayAt(t -> below(dbAMinute * (15 + t) / 60) + noise.next()));
        }

        /** A dwell of half a second, and a pause of the readings in it: two means of 0.64 s have not been seen since. */
        @Test
        void noDriftIsMeasuredAcrossAGap() {
            best(0);
            level.follow(15, t -> below(t / 60));
            level.blocks.front.pyramid.clear();
            level.sight.gap();
            Dwell quick = new Dwell(level.sight, best, 500_000_000L, told);
            long since = level.nowNanos();
            level.by(t -> stay = quick.stay(t, since));
            level.follow(0.88, t -> below((15 + t) / 60));
            assertEquals(Stay.SHORT, stay);
        }

        @Test
        void aLevelThatRestsHasNotDrifted() {
            best(0);
            level.rest(20, below(0.3));
            assertEquals(Stay.SHORT, stayAt(t -> below(0.3)));
            assertEquals(Watched.VOLTS, best.value());
        }
    }

    @Nested
    class OnTheWayBack {

        private void rest(double seconds, double missingDb, boolean near) {
            level.by(t -> dwell.watchRest(t, near));
            level.rest(seconds, below(missingDb));
            level.by(t -> {});
        }

        @Test
        void aHandThatRestsNearTheBestIsToldOnceWhatIsMissing() {
            best(0);
            dwell.passed(level.nowNanos());
            rest(3, 0.5, true);
            assertEquals(List.of(), told.words());
            rest(8, 0.5, true);
            assertEquals(List.of("stopped-short"), told.words());
            assertEquals(0.5, told.first("stopped-short").value(), 0.001);
            assertEquals(1 - below(0.5), dwell.loss() / Watched.VOLTS, 0.000_1);
            dwell.passed(level.nowNanos());
            rest(5, 0.5, true);
            assertEquals(2, told.count("stopped-short"));
        }

        /** A single reading is off by a tenth of a decibel. */
        @Test
        void whatIsMissingIsAMeanOverTheRest() {
            Gauss gauss = new Gauss(2);
            best(0);
            dwell.passed(level.nowNanos());
            level.by(t -> dwell.watchRest(t, true));
            level.follow(12, t -> below(0.5) + 0.012 * gauss.next());
            assertEquals(0.5, told.first("stopped-short").value(), 0.02);
        }

        @Test
        void farFromTheBestItMayRest() {
            best(0);
            dwell.passed(level.nowNanos());
            rest(10, 3, false);
            assertEquals(List.of(), told.words());
            rest(3, 3, true);
            assertEquals(List.of(), told.words());
        }

        @Test
        void aHandThatMovesDoesNotRest() {
            best(0);
            dwell.passed(level.nowNanos());
            level.by(t -> dwell.watchRest(t, true));
            level.follow(10, t -> 0.5 + 0.02 * t);
            assertEquals(List.of(), told.words());
            level.rest(8, 0.7);
            assertEquals(1, told.count("stopped-short"));
            assertTrue(told.first("stopped-short").tNanos() >= 13_500_000_000L);
        }
    }
}
