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
        assertEquals(1, told.count("reversed"), told.all.toString());
        assertEquals(0, told.count("two-peaks"));
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
