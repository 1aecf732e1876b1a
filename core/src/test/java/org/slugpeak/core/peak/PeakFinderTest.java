package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Readings.resonance;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.reading.Condition;

class PeakFinderTest {

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
    private final Readings meter = new Readings(finder, 50, 0.0035);

    @Nested
    class OnTheUsualWay {

        @Test
        void tellsPassedReturnedHeldInThisOrder() {
            meter.rest(1, resonance(8, 3).applyAsDouble(1)).follow(8.5, resonance(8, 3));
            meter.follow(1.5, resonance(11, 3)).rest(4, 1);
            assertEquals(List.of("passed", "returned", "held"), told.words());
            assertEquals(0, told.first("held").db(), 0.05);
        }

        @Test
        void flagsThePassWithinTwoTenthsOfADecibel() {
            meter.rest(1, resonance(10, 4).applyAsDouble(1)).follow(10, resonance(10, 4));
            double loss = -20
                    * Math.log10(
                            resonance(10, 4).applyAsDouble(told.first("passed").tNanos() / 1e9));
            assertEquals(0.1, loss, 0.06);
            assertEquals(10, told.first("passed").atNanos() / 1e9, 0.5);
        }

        @Test
        void keepsABestThatNoiseDoesNotInflate() {
            meter.rest(1, resonance(10, 4).applyAsDouble(1)).follow(12, resonance(10, 4));
            assertEquals(1, finder.best(), 0.003);
            assertTrue(finder.bestSigma() > 0 && finder.bestSigma() < 0.003);
        }

        @Test
        void tellsPassedAgainWhenTheHandOvershoots() {
            meter.follow(11, resonance(8, 3)).follow(8, resonance(14, 4));
            assertTrue(told.count("passed") >= 2);
        }

        @Test
        void saysHowTheReadingStandsToTheBest() {
            meter.follow(8, resonance(8, 3)).rest(2, 1);
            assertEquals(1, finder.ofBest(), 0.006);
            meter.follow(1, t -> Math.pow(10, -3.0 * (t - 10) / 20)).rest(2, Math.pow(10, -3.0 / 20));
            assertEquals(3, finder.belowBestDb(), 0.05);
            assertEquals(Math.pow(10, -3.0 / 20), finder.ofBest(), 0.006);
        }

        @Test
        void knowsWhichWayTheReadingGoes() {
            meter.rest(2, 0.5);
            assertEquals(Trend.STEADY, finder.trend());
            meter.follow(1, t -> 0.5 + 0.1 * (t - 2));
            assertEquals(Trend.RISING, finder.trend());
            meter.follow(1, t -> 0.6 - 0.1 * (t - 3));
            assertEquals(Trend.FALLING, finder.trend());
        }
    }

    @Nested
    class BeforeAnyPeak {

        @Test
        void hasNoBestBeforeTheFirstReadings() {
            assertTrue(Double.isNaN(finder.best()));
            assertTrue(Double.isNaN(finder.smoothed()));
            assertTrue(Double.isNaN(finder.ofBest()));
            assertTrue(Double.isNaN(finder.belowBestDb()));
        }

        @Test
        void callsAFallFromTheStartTheWrongWayAndNoPass() {
            meter.rest(2, 0.7).follow(4, t -> 0.7 - 0.05 * (t - 2));
            assertTrue(told.count("wrong-way") >= 1);
            assertEquals(0, told.count("passed"));
            assertEquals(Trend.FALLING, finder.trend());
        }

        @Test
        void findsThePeakAfterTurningTheOtherWay() {
            meter.rest(1, 0.7).follow(1, t -> 0.7 - 0.1 * (t - 1)).follow(9, resonance(8, 4));
            assertEquals(1, told.count("passed"));
        }

        @Test
        void saysFlatWhereNothingMoves() {
            meter.rest(40, 0.7);
            assertEquals(List.of("flat"), told.words());
        }

        @Test
        void saysEndOfTravelWhereARiseStopsForGood() {
            meter.rest(1, 0.5).follow(4, t -> 0.5 + 0.1 * (t - 1)).rest(12, 0.9);
            assertEquals(List.of("end-of-travel"), told.words());
        }

        @Test
        void takesNoPauseOnTheSlopeForAPeak() {
            meter.follow(4, resonance(9, 4)).rest(3, resonance(9, 4).applyAsDouble(4));
            assertEquals(0, told.count("passed"));
        }
    }

    @Nested
    class WhenTheBestIsNoLongerTrue {

        @Test
        void keepsABestThatALaterPeakDoesNotReach() {
            meter.follow(10, resonance(8, 3))
                    .follow(6, t -> 0.95 * resonance(13, 3).applyAsDouble(t));
            assertEquals(1, told.count("passed"), told.all.toString());
            assertEquals(1, told.count("two-peaks"));
            assertEquals(0, told.count("best-aged"));
            assertEquals(0.95, told.first("two-peaks").value(), 0.01);
            assertEquals(1, finder.best(), 0.005);
        }

        @Test
        void saysReversedWhenAPassTurnsOutToHaveBeenNone() {
            meter.follow(4, t -> 0.3 + 0.1 * t).follow(0.5, t -> 0.7 - 0.1 * (t - 4));
            meter.follow(3, t -> 0.65 + 0.1 * (t - 4.5));
            assertEquals(List.of("passed", "returned", "reversed"), told.words());
        }

        @Test
        void lowersTheBestWhenTheGeneratorIsTurnedDown() {
            meter.follow(6, resonance(9, 4)).rest(3, 0.4);
            assertEquals(0, told.count("passed"));
            assertEquals(1, told.count("best-aged"));
            assertEquals(0.4, finder.best(), 0.01);
        }
    }

    @Nested
    class WithTwoMaxima {

        @Test
        void tellsOfALowerSecondOne() {
            meter.follow(
                    20,
                    t -> resonance(7, 1.5).applyAsDouble(t)
                            + 0.6 * resonance(16, 1).applyAsDouble(t));
            assertEquals(1, told.count("two-peaks"), told.all.toString());
        }

        @Test
        void tellsOfAHigherSecondOne() {
            meter.follow(
                    20,
                    t -> 0.6 * resonance(7, 1).applyAsDouble(t)
                            + resonance(16, 1.5).applyAsDouble(t));
            assertEquals(1, told.count("two-peaks"));
            assertEquals(2, told.count("passed"));
        }
    }

    @Nested
    class WhenReadingsCannotBeTrusted {

        @Test
        void neverLetsThemIn() {
            meter.rest(3, 0.5);
            double smoothed = finder.smoothed();
            for (Condition condition : Condition.values()) {
                if (!condition.isTrusted()) {
                    finder.accept(meter.nanos() + 1, 99, condition);
                }
            }
            assertEquals(smoothed, finder.smoothed());
            assertEquals(0.5, finder.best(), 0.01);
        }

        @Test
        void neverTakesASpikeForABest() {
            for (int i = 0; i < 40; i++) {
                meter.rest(0.4, 0.5).rest(0.02, i % 2 == 0 ? 5 : 0.05);
            }
            assertEquals(0.5, finder.best(), 0.005);
            assertEquals(0, told.count("passed"));
        }

        @Test
        void takesNoDecadeJumpForAPeak() {
            meter.follow(6, resonance(12, 5))
                    .rest(0.4, 10 * resonance(12, 5).applyAsDouble(6))
                    .skip(-0.4);
            meter.follow(1, resonance(12, 5));
            assertEquals(List.of(), told.words());
            assertTrue(finder.best() < 1);
        }

        /** The generator was halved, and what follows is multiplied by two to go on where it was: so is the meter's own noise. */
        @Test
        void learnsTheNoiseAnewOnAnotherScaleAndKeepsTheBest() {
            Readings fine = new Readings(finder, 50, 0.000_5).rest(1, 0.5);
            fine.follow(5, t -> 0.5 + 0.1 * (t - 1));
            double best = finder.best();
            assertEquals(Trend.RISING, finder.trend());
            finder.scaleChanged();
            assertEquals(Trend.STEADY, finder.trend());
            assertEquals(best, finder.best());
            new Readings(finder, 50, 0.01).skip(fine.seconds()).rest(60, 1);
            assertEquals(0, told.count("passed"), told.all.toString());
        }

        @Test
        void keepsTheBestOverAGap() {
            meter.follow(6, resonance(12, 5));
            double best = finder.best();
            finder.gap();
            meter.skip(20).rest(2, 0.3);
            assertEquals(best, finder.best(), 1e-6);
            assertEquals(0, told.count("passed"));
        }
    }

    @Nested
    class WithNegativeReadings {

        @Test
        void huntsThemByMagnitudeAndSaysSoOnce() {
            meter.follow(12, t -> -resonance(8, 3).applyAsDouble(t));
            assertEquals(1, told.count("negative-going"));
            assertEquals(1, told.count("passed"));
            assertEquals(-1, finder.best(), 0.005);
            assertTrue(finder.belowBestDb() > 0);
        }

        /** The fourth reading is the first that is judged, and the best where they come down to zero from it. */
        @Test
        void knowsTheSignFromTheFirstReading() {
            new Readings(finder, 50, 0.000_01).follow(0.4, t -> -1 + 0.5 * t);
            assertEquals(-0.96, finder.best(), 0.004);
            assertEquals(Trend.FALLING, finder.trend());
        }

        /** The zero of the instrument is a little beside zero while the generator is off. */
        @Test
        void takesTheLargerOfTwoSignsForThatOfTheSignal() {
            Readings steady = new Readings(finder, 50, 0.000_01);
            steady.rest(2, 0.1).rest(2, -0.5).rest(1, -0.45);
            assertEquals("negative-going", told.words().get(0));
            assertEquals(-0.5, finder.best(), 0.002);
            assertEquals(-0.45, finder.smoothed(), 0.002);
        }

        @Test
        void takesNoSmallerOneForIt() {
            Readings steady = new Readings(finder, 50, 0.000_01);
            steady.rest(2, 0.1).rest(3, -0.003).rest(2, 0.1);
            assertEquals(List.of("signal-gone", "signal-back"), told.words());
            assertEquals(0.1, finder.best(), 0.000_1);
        }

        @Test
        void findsTheSignAfterAStartNearZero() {
            meter.rest(1, 0)
                    .follow(8, t -> -2 * resonance(9, 2).applyAsDouble(t))
                    .follow(3, t -> -2 * resonance(9, 2).applyAsDouble(t));
            assertEquals(1, told.count("negative-going"));
            assertEquals(1, told.count("passed"));
            assertEquals(-2, finder.best(), 0.01);
        }
    }

    @Nested
    class OnASlowMeter {

        private final Readings slow = new Readings(finder, 3, 0.0005);

        @Test
        void asksForSlowerTurning() {
            slow.rest(5, resonance(8, 1).applyAsDouble(5)).follow(6, resonance(8, 1));
            assertTrue(told.count("turn-slower") >= 1);
            assertTrue(told.first("turn-slower").value() > 1.3);
        }

        @Test
        void asksForNothingWhereTheTurningIsSlowEnough() {
            slow.rest(5, resonance(30, 12).applyAsDouble(5)).follow(40, resonance(30, 12));
            assertEquals(1, told.count("passed"));
            assertEquals(0, told.count("turn-slower"));
        }

        @Test
        void takesNoFlickerOfTheLastDigitForAPass() {
            for (int i = 0; i < 600; i++) {
                slow.skip(1.0 / 3);
                finder.accept(
                        slow.nanos(),
                        Math.rint(1000 * Math.min(1, 0.7 + 0.01 * i)) / 1000 + (i % 7 == 0 ? 0.001 : 0),
                        Condition.OK);
            }
            assertFalse(told.words().contains("passed"));
        }
    }

    @Nested
    class AfterRestart {

        @Test
        void knowsNothingOfTheAdjusterBefore() {
            meter.follow(12, resonance(8, 3));
            finder.restart();
            assertTrue(Double.isNaN(finder.best()));
            assertTrue(Double.isNaN(finder.smoothed()));
            assertEquals(Trend.STEADY, finder.trend());
            meter.rest(1, 0.2);
            assertEquals(0.2, finder.best(), 0.005);
        }

        @Test
        void findsTheNextPeakJustAsWell() {
            meter.follow(12, resonance(8, 3));
            finder.restart();
            meter.follow(12, resonance(20, 3));
            assertEquals(2, told.count("passed"));
        }
    }
}
