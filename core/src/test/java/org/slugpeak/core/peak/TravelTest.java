package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Watched.below;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TravelTest {

    private final Told told = new Told();
    private final Watched level = new Watched();
    private final TurnDetector turns = new TurnDetector(level.sight.sway);
    private Travel travel = of(Seek.PEAK);

    private Travel of(Seek seek) {
        return new Travel(level.sight, told, new Orientation(seek));
    }

    @BeforeEach
    void itLooksAtEveryBlock() {
        turns.forget(Blocks.SECONDS);
        level.by(t -> {
            if (level.sight.isReady()) {
                if (turns.look(level.blocks.front.pyramid, level.blocks.front.noise) != TurnDetector.Turn.NONE) {
                    turns.restart(Blocks.SECONDS);
                }
                travel.look(t, turns);
                travel.lookAway(t, turns, () -> 2);
            }
        });
    }

    @Nested
    class Nowhere {

        @Test
        void nothingThatMovesForHalfAMinuteIsFlatAndToldOnce() {
            level.rest(29.9, 1);
            assertEquals(List.of(), told.words());
            level.rest(0.2, 1);
            assertEquals(List.of("flat"), told.words());
            level.rest(60, 1);
            assertEquals(1, told.all.size());
        }

        @Test
        void theNextAdjusterHasItsOwnHalfMinute() {
            level.rest(31, 1);
            travel.restart();
            level.rest(29.9, 1);
            assertEquals(1, told.count("flat"));
            level.rest(0.2, 1);
            assertEquals(2, told.count("flat"));
        }

        @Test
        void aJumpOfTheLevelBeginsTheHalfMinuteAnew() {
            level.rest(20, 1);
            travel.gap();
            level.rest(29.9, 1);
            assertEquals(List.of(), told.words());
            level.rest(0.2, 1);
            assertEquals(List.of("flat"), told.words());
        }

        @Test
        void whereNothingIsReadTheSignalIsMissingAndNotTheAdjuster() {
            Gauss gauss = new Gauss(3);
            level.follow(31, t -> 0.001 * gauss.next());
            assertEquals(List.of("signal-gone"), told.words());
            assertEquals(0, told.first("signal-gone").value());
        }

        @Test
        void aLevelThatStandsOutOfItsNoiseIsOne() {
            Gauss gauss = new Gauss(3);
            level.follow(31, t -> 0.001 + 0.001 * gauss.next());
            assertEquals(List.of("flat"), told.words());
        }
    }

    @Nested
    class AgainstTheEndStop {

        private void rise() {
            level.rest(2, 1);
            level.follow(3, t -> 1 + 0.1 * t);
        }

        /** The longest mean, of 5.12 s, rises until it holds nothing but the rest. */
        @Test
        void aRiseThatStopsForSixSecondsIsTheEndOfTheTravelAndToldOnce() {
            rise();
            level.rest(5.9, 1.3);
            assertEquals(List.of(), told.words());
            level.rest(5.5, 1.3);
            assertEquals(List.of("end-of-travel"), told.words());
            level.rest(60, 1.3);
            assertEquals(1, told.all.size());
        }

        @Test
        void itIsToldAgainToWhoTurnedRoundOrBeganAnew() {
            rise();
            level.rest(12, 1.3);
            travel.passed(level.nowNanos());
            level.rest(1, 1.3);
            assertEquals(2, told.count("end-of-travel"));
            travel.restart();
            level.rest(1, 1.3);
            assertEquals(3, told.count("end-of-travel"));
        }

        @Test
        void aLevelThatFellIsAtNoEnd() {
            level.rest(2, 1);
            level.follow(1, t -> 1 - 0.1 * t);
            level.rest(60, 0.9);
            assertEquals(0, told.count("end-of-travel"));
            assertEquals(0, told.count("flat"));
        }
    }

    /** A reading moves at most by a twentieth of itself where a hand is slow enough; from 1.3 times as much a word is worth it. */
    @Nested
    class TooFastForTheMeter {

        private void threeReadings(double first, double second, double third) {
            level.rest(0.02, first);
            level.rest(0.02, second);
            level.rest(0.02, third);
        }

        @ParameterizedTest
        @CsvSource({"0.08, 1", "0.07, 0", "0.3, 1", "-0.08, 1", "-0.05, 0"})
        void isWhoMovesTheReadingFurtherThanThatTwiceRunning(double step, int times) {
            level.rest(3, 1);
            threeReadings(1, 1 + step, 1 + 2 * step);
            assertEquals(times, told.count("turn-slower"));
            if (times > 0) {
                double factor = Math.abs(step) / (0.05 * (1 + 2 * step));
                assertEquals(factor, told.first("turn-slower").value(), 1e-9);
            }
        }

        @Test
        void theSmallerOfTwoMovementsCounts() {
            level.rest(3, 1);
            threeReadings(1, 1.5, 1.55);
            threeReadings(1, 1.05, 1.6);
            assertEquals(List.of(), told.words());
        }

        @Test
        void toAndFroIsNoTurning() {
            level.rest(3, 1);
            threeReadings(1, 1.2, 1);
            threeReadings(1.2, 1, 1.2);
            assertEquals(List.of(), told.words());
        }

        @Test
        void itIsToldAgainOnlyToWhoIsMuchFaster() {
            level.rest(3, 1);
            threeReadings(1, 1.1, 1.2);
            level.rest(3, 1.2);
            threeReadings(1.2, 1.32, 1.44);
            assertEquals(1, told.count("turn-slower"), told.all.toString());
            level.rest(3, 1.44);
            threeReadings(1.44, 1.7, 1.96);
            assertEquals(2, told.count("turn-slower"), told.all.toString());
            travel.restart();
            level.rest(3, 1);
            threeReadings(1, 1.1, 1.2);
            assertEquals(3, told.count("turn-slower"), told.all.toString());
        }

        @Test
        void noiseIsNoTurning() {
            Gauss gauss = new Gauss(4);
            level.follow(25, t -> 1 + 0.1 * gauss.next());
            assertEquals(0, told.count("turn-slower"));
        }

        @Test
        void aDipMayBeSteeper() {
            travel = of(Seek.DIP);
            level.rest(3, -1);
            threeReadings(-1, -0.8, -0.6);
            assertEquals(List.of(), told.words());
        }
    }

    @Nested
    class TheWrongWay {

        private void wrongWay() {
            travel.wrongWay(level.nowNanos(), () -> 1.5);
        }

        @Test
        void isToldWithTheFallAndOnceForEachTurn() {
            level.rest(2, 1);
            wrongWay();
            wrongWay();
            assertEquals(List.of("wrong-way"), told.words());
            assertEquals(1.5, told.first("wrong-way").value());
            assertEquals(level.nowNanos(), told.first("wrong-way").tNanos());
        }

        @Test
        void mayBeToldAgainOnceTheFallHasPaused() {
            level.rest(2, 1);
            wrongWay();
            level.rest(1.1, 1);
            wrongWay();
            assertEquals(1, told.count("wrong-way"));
            level.rest(0.2, 1);
            wrongWay();
            assertEquals(2, told.count("wrong-way"));
        }

        @Test
        void orOnceTheLevelHasRisen() {
            level.rest(2, 1);
            wrongWay();
            level.follow(0.3, t -> 1 + t);
            level.follow(0.3, t -> 1.3 - t);
            wrongWay();
            assertEquals(2, told.count("wrong-way"));
        }

        @Test
        void isNeverToldWhileTheLevelRises() {
            level.rest(2, 1);
            level.follow(1, t -> 1 + 0.1 * t);
            wrongWay();
            assertEquals(List.of(), told.words());
        }

        /** Nobody who goes on after three words listens to a fourth; who was told of a pass since is told anew. */
        @Test
        void isToldThreeTimesAndNoMore() {
            for (int i = 0; i < 6; i++) {
                level.rest(2, 1);
                wrongWay();
            }
            assertEquals(3, told.count("wrong-way"));
            travel.passed(level.nowNanos());
            wrongWay();
            assertEquals(4, told.count("wrong-way"));
            travel.restart();
            wrongWay();
            assertEquals(5, told.count("wrong-way"));
        }
    }

    /** The hand hears of it, and has 1.2 s to turn round. */
    @Nested
    class AfterAWordToTurn {

        private void fallsAfterTheWord(double seconds, DoubleUnaryOperator levelAtSeconds) {
            level.rest(3, 1);
            turns.assumeDown(Blocks.SECONDS);
            travel.passed(level.nowNanos());
            level.follow(seconds, levelAtSeconds);
        }

        @Test
        void whoGoesOnFallingIsToldOnce() {
            fallsAfterTheWord(8, t -> below(t));
            assertEquals(List.of("wrong-way"), told.words());
            assertEquals(2, told.first("wrong-way").value(), "as much as it fell below the best");
            assertEquals(3 + 1.2 + 0.7, told.first("wrong-way").tNanos() / 1e9, 0.1);
        }

        @ParameterizedTest
        @ValueSource(doubles = {1, 1.7})
        void whoStopsIsNot(double stopsAfterSeconds) {
            fallsAfterTheWord(stopsAfterSeconds, t -> below(t));
            level.rest(20, below(stopsAfterSeconds));
            assertEquals(List.of(), told.words());
        }

        @Test
        void whoTurnedRoundIsNot() {
            fallsAfterTheWord(1.1, t -> below(t));
            level.follow(1, t -> below(1.1 - t));
            assertEquals(List.of(), told.words());
        }

        /** The noise of a reading is as large as the fall in a second and a half, so that no speed shows in time. */
        @Test
        void whoFallsUnseenInNoiseIsToldWhenTheFallIsSure() {
            Gauss gauss = new Gauss(5);
            level.follow(5, t -> 1 + 0.05 * gauss.next());
            turns.assumeDown(Blocks.SECONDS);
            travel.passed(level.nowNanos());
            level.follow(14, t -> below(0.3 * t) + 0.05 * gauss.next());
            assertTrue(told.count("wrong-way") >= 1);
            double seconds = told.first("wrong-way").tNanos() / 1e9 - 5;
            assertTrue(seconds > 4 && seconds < 12, "after " + seconds + " s");
        }
    }
}
