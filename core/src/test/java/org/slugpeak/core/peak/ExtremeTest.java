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

/** What is told to hands that obey, stop short, go on or begin again. The peak is 0.3 V high; there is hardly any noise. */
class ExtremeTest {

    private static final double VOLTS = 0.3;

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
    private final Readings meter = new Readings(finder, 50, 0.000_01);

    private void follow(double seconds, DoubleUnaryOperator level) {
        double begin = meter.seconds();
        meter.follow(seconds, t -> VOLTS * level.applyAsDouble(t - begin));
    }

    private void rest(double seconds, double level) {
        follow(seconds, t -> level);
    }

    /** From so many decibels below a top up to it, over it, and down again by as much. */
    private void cross(double top, double db) {
        double seconds = Math.sqrt(db / 0.6);
        follow(2 * seconds, t -> top * below(0.6 * (t - seconds) * (t - seconds)));
    }

    /** From so far below the best to so little below it. */
    private void comeBack(double fromDb, double toDb) {
        follow(2, t -> below(toDb + (fromDb - toDb) * Math.pow(1 - t / 2, 2)));
    }

    @Test
    void theBestIsWhereItWasReached() {
        cross(1, 2);
        assertEquals(VOLTS, finder.best(), 0.000_3 * VOLTS);
        assertEquals(Math.sqrt(2 / 0.6), finder.bestAtNanos() / 1e9, 0.06);
        assertTrue(Math.abs(finder.bestAtNanos() - told.first("passed").atNanos()) <= 100_000_000);
    }

    @Nested
    class WhoStopsShort {

        @Test
        void onTheWayBackIsToldWhatIsMissingOnceForEachPass() {
            cross(1, 2);
            comeBack(2, 0.4);
            rest(8, below(0.4));
            assertEquals(List.of("passed", "stopped-short"), told.words());
            assertEquals(0.4, told.first("stopped-short").value(), 0.01);
            follow(1.2, t -> below(0.6 * Math.pow(Math.sqrt(0.4 / 0.6) - t, 2)));
            follow(1, t -> below(0.1 + 2 * t));
            comeBack(2.1, 0.4);
            rest(8, below(0.4));
            assertEquals(2, told.count("stopped-short"), told.all.toString());
        }

        /** It slips by a fifth of a decibel after the return, and stays there. */
        @Test
        void atTheBestIsToldToComeBackAndHeldWhenItComesBackAfterAll() {
            cross(1, 2);
            comeBack(2, 0);
            follow(1, t -> below(0.19 * t));
            rest(5, below(0.19));
            assertEquals(List.of("passed", "returned", "stopped-short", "passed"), told.words());
            assertEquals(0.19, told.first("stopped-short").value(), 0.01);
            follow(1, t -> below(0.19 * (1 - t)));
            rest(4, 1);
            assertEquals(2, told.count("returned"), told.all.toString());
            assertEquals(1, told.count("held"), told.all.toString());
        }
    }

    @Nested
    class WhoSlippedAfterTheReturn {

        /** Sixteen hundredths are too many by one; half of that has to be made good. */
        @Test
        void isBackOnceHalfOfItIsMadeGood() {
            cross(1, 2);
            follow(0.62, t -> below(2 - 3 * t));
            follow(0.3, t -> below(0.14 + 0.1 * t));
            rest(4.5, below(0.17));
            assertEquals(List.of("passed", "returned", "stopped-short"), told.words());
            follow(4, t -> below(0.17 - 0.02 * t));
            rest(3, below(0.09));
            assertEquals(1, told.count("returned"), told.all.toString());
            follow(1, t -> below(0.09 - 0.02 * t));
            rest(3, below(0.07));
            assertEquals(2, told.count("returned"), told.all.toString());
        }
    }

    @Nested
    class WhoGoesTheWrongWay {

        @Test
        void behindThePeakIsToldOnce() {
            cross(1, 1);
            follow(6, t -> below(1 + 1.5 * t));
            assertEquals(List.of("passed", "wrong-way"), told.words());
            double late =
                    (told.first("wrong-way").tNanos() - told.first("passed").tNanos()) / 1e9;
            assertTrue(late > 1.2 && late < 2.5, "after " + late + " s");
        }

        @Test
        void fromTheStartIsToldAndAgainAfterAPause() {
            rest(3, 1);
            follow(1, t -> below(2 * t));
            assertEquals(List.of("wrong-way"), told.words());
            assertTrue(told.first("wrong-way").tNanos() < 3_300_000_000L);
            rest(5, below(2));
            follow(2, t -> below(2 + 2 * t));
            assertEquals(2, told.count("wrong-way"));
        }
    }

    /** A second crossing that is lower by less than a twentieth of a decibel, half a percent, shows the same top. */
    @ParameterizedTest
    @CsvSource({"0.998, 0.9990", "0.992, 1"})
    void twoLooksAtTheSameTopAreAveragedAndALowerOneIsNot(double second, double best) {
        cross(1, 2);
        cross(second, 2);
        assertEquals(2, told.count("passed"));
        assertEquals(best, finder.best() / VOLTS, 0.000_5);
    }

    /** One decibel is more than the three tenths that a pass may have been wrong by. */
    @Test
    void aPassWasNoneWhereTheLevelGoesBeyondIt() {
        cross(1, 1);
        follow(3, t -> below(1 - 0.7 * t));
        rest(4, below(-1.1));
        assertEquals(List.of("passed", "returned", "reversed"), told.words(), "and nothing is held");
    }

    /** Held, the level may be worse by a fifth of a decibel; once it went up beyond, a fall counts from a twentieth again. */
    @Test
    void whereItGoesUpBeyondWhatWasHeldTheNextTopIsPassedAsTheFirst() {
        cross(1, 2);
        comeBack(2, 0);
        rest(3, 1);
        assertEquals(1, told.count("held"));
        follow(1.75, t -> below(0.6 * (t - 1.3) * (t - 1.3) - 1));
        rest(2, below(-0.88));
        assertEquals(2, told.count("passed"), told.all.toString());
        assertTrue(told.all.get(told.all.size() - 1).db() < 0.12, told.all.toString());
    }

    /** So is the top once it was overshot: a hand that turns round before it has come all the way back is told again. */
    @Test
    void whereTheTopWasOvershotATwentiethCountsAgain() {
        cross(1, 2);
        comeBack(2, 0);
        follow(0.5, t -> below(t));
        assertEquals(2, told.count("passed"), told.all.toString());
        follow(1.9, t -> below(0.5 - 0.2 * t));
        follow(0.5, t -> below(0.12 + 0.2 * t));
        assertEquals(List.of("passed", "returned", "passed", "passed"), told.words());
    }

    /** Half of a twentieth is made good: that is a return, though too little for a rise that is known to be one. */
    @Test
    void aFallAfterAReturnThatWasTooSmallForARiseIsAPass() {
        follow(2.11, t -> below(0.6 * (t - 1.8) * (t - 1.8)));
        rest(0.5, below(0.0577));
        assertEquals(List.of("passed"), told.words());
        follow(2, t -> below(0.0577 - 0.02 * t));
        assertEquals(List.of("passed", "returned"), told.words());
        follow(1, t -> below(0.0177 + t));
        assertEquals(List.of("passed", "returned", "passed"), told.words());
    }

    /** The word of the two peaks, too, is one after which a hand needs its time to turn. */
    @Test
    void whoWasToldOfTwoPeaksIsNotToldTheWrongWayBeforeHeCanTurn() {
        cross(1, 3);
        cross(0.8, 3);
        double twoPeaksAt = told.first("two-peaks").tNanos() / 1e9;
        follow(3, t -> 0.8 * below(3 + 3 * t));
        assertEquals(List.of("passed", "wrong-way", "two-peaks", "wrong-way"), told.words());
        double late = told.all.get(3).tNanos() / 1e9 - twoPeaksAt;
        assertTrue(late > 1.2, "after " + late + " s");
    }

    /** Hum of three percent beats three times a second: its first dip looks like a top that was crossed, the others are as deep and come again. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.2, 0.4, 0.6, 0.8})
    void aBeatOnTheWayUpTurnsNobodyRoundAtEveryDip(double phase) {
        follow(8, t -> (0.5 + t / 16) * (1 + 0.03 * Math.sin(2 * Math.PI * (3 * t + phase))));
        assertTrue(told.count("passed") <= 2, told.all.toString());
    }

    /** Down three decibels and up again within a second, over the top and half a decibel down on the other side. */
    private void overshoot() {
        follow(1.4, t -> below(3 * (1 - t) * (1 - t)));
        follow(0.6, t -> below(0.48 + 4.2 * t));
    }

    @Test
    void whoOvershootsAndComesBackAsFastIsToldToComeSlower() {
        cross(1, 3);
        overshoot();
        assertEquals(2, told.count("passed"), told.all.toString());
        assertEquals(0, told.count("turn-slower"));
        overshoot();
        assertEquals(1, told.count("turn-slower"), told.all.toString());
        finder.restart();
        cross(1, 3);
        overshoot();
        assertEquals(1, told.count("turn-slower"), "the next adjuster has not been overshot");
    }

    @Test
    void whereTheGeneratorWasTurnedDownBehindThePeakAFallCountsAtOnce() {
        cross(1, 1);
        rest(1, below(1));
        rest(3, 0.4);
        assertEquals(1, told.count("best-aged"));
        follow(1, t -> 0.4 * below(t));
        assertEquals(2, told.count("passed"), told.all.toString());
    }

    @Test
    void anAdjusterIsNotFlatBecauseTheGeneratorWasTurnedUp() {
        rest(20, 0.4);
        rest(29, 1);
        assertEquals(0, told.count("flat"));
        rest(3, 1);
        assertEquals(1, told.count("flat"));
    }

    @Nested
    class TheNextAdjuster {

        @Test
        void hasASignalWhateverTheOneBeforeHad() {
            rest(3, 1);
            rest(3, 0);
            assertEquals(List.of("signal-gone"), told.words());
            finder.restart();
            rest(2, 0.07);
            assertEquals(0.07 * VOLTS, finder.best(), 0.001);
        }

        @Test
        void maybeFlatToo() {
            rest(31, 1);
            finder.restart();
            rest(31, 1);
            assertEquals(List.of("flat", "flat"), told.words());
        }

        @Test
        void mayHaveTheSameTwoPeaks() {
            for (int adjuster = 0; adjuster < 2; adjuster++) {
                cross(1, 3);
                cross(0.8, 3);
                finder.restart();
            }
            assertEquals(2, told.count("two-peaks"), told.all.toString());
        }

        @Test
        void isNotBehindItsPeakYet() {
            cross(1, 2);
            finder.restart();
            rest(1, below(2));
            follow(1, t -> below(2 + t));
            assertEquals(1, told.count("passed"));
            assertEquals(1, told.count("wrong-way"));
        }
    }
}
