package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Watched.below;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Losses are in decibels below the best, or in parts of it; a block takes 20 ms. */
class ReturnTest {

    private final Told told = new Told();
    private final Watched level = new Watched();
    private final Best best = new Best(level.blocks.front);
    private final Haste haste = new Haste(told);
    private final Return comingBack = new Return(level.sight, best, haste);

    private final Gauss gauss = new Gauss(1);

    private boolean turnedUp;
    private double backAtDb = Double.NaN;
    private double backAfterSeconds;

    /** With a hundredth of a millivolt or so of noise: no meter shows equal readings for ever. */
    private void move(double seconds, DoubleUnaryOperator levelAtSeconds) {
        level.follow(seconds, t -> levelAtSeconds.applyAsDouble(t) + 0.000_02 * gauss.next());
    }

    private void rest(double seconds, double part) {
        move(seconds, t -> part);
    }

    /** The best is known to a sigma, in parts of it, and was passed: the hand is so far below it. */
    private void passed(double sigma, double deepestDb) {
        best.recall(new Best.Mark(Watched.VOLTS, sigma * Watched.VOLTS, 0));
        rest(3, below(deepestDb));
        comingBack.begin(Watched.VOLTS);
    }

    /** Goes on for so long; notes when it is back first. */
    private void follow(double seconds, DoubleUnaryOperator levelAtSeconds) {
        long begin = level.nowNanos();
        backAtDb = Double.NaN;
        level.by(t -> {
            comingBack.look(t);
            if (Double.isNaN(backAtDb) && comingBack.isBack(turnedUp)) {
                backAfterSeconds = (t - begin) / 1e9;
                backAtDb = -20 * Math.log10(levelAtSeconds.applyAsDouble(backAfterSeconds));
            }
        });
        move(seconds, levelAtSeconds);
        level.by(t -> {});
    }

    private boolean isBack() {
        return !Double.isNaN(backAtDb);
    }

    /** Rises for a second until so much is missing, and stays there. */
    private boolean stopsAt(double missingDb) {
        turnedUp = true;
        move(1, t -> below(1 - (1 - missingDb) * t));
        rest(4, below(missingDb));
        follow(0.1, t -> below(missingDb));
        return isBack();
    }

    /** Slower and slower: what is missing goes as the square of the time left to the top. */
    private void comeBack(double dbAfterASecond) {
        follow(1, t -> below(dbAfterASecond * (1 - t) * (1 - t)));
    }

    /** A twentieth of a decibel a second: no top is soon there. */
    private double creepsBackAtDb(double fromDb) {
        move(1, t -> below(fromDb + 0.3 * (1 - t)));
        follow(4, t -> below(fromDb - 0.05 * t));
        return backAtDb;
    }

    @ParameterizedTest
    @CsvSource({"0.05, true", "0.095, true", "0.105, false", "0.3, false"})
    void aHandThatStandsStillWithinATenthIsBack(double missingDb, boolean back) {
        passed(0, 1);
        assertEquals(back, stopsAt(missingDb));
    }

    @Test
    void aLevelThatHasNotRisenIsNotBack() {
        passed(0, 0.06);
        follow(1, t -> below(0.06 - 0.05 * t));
        assertTrue(isBack(), "it rises");
        rest(4, below(0.01));
        follow(1, t -> below(0.01));
        assertFalse(isBack(), "nothing moves any more");
        turnedUp = true;
        follow(1, t -> below(0.01));
        assertTrue(isBack(), "it has risen before");
    }

    @Nested
    class Recovers {

        @ParameterizedTest
        @CsvSource({"2, 1.02, false", "2, 0.98, true", "0.2, 0.104, false", "0.2, 0.096, true"})
        void whoMakesGoodHalfOfWhatWasLost(double deepestDb, double missingDb, boolean recovered) {
            passed(0, deepestDb);
            double half = (1 - below(deepestDb)) / 2;
            rest(3, 1 - half * missingDb / (deepestDb / 2));
            assertEquals(recovered, comingBack.hasRecovered());
        }

        @Test
        void notWithOneReadingButWithAThirdOfASecond() {
            passed(0, 6);
            rest(0.1, below(0.1));
            assertFalse(comingBack.hasRecovered());
            rest(0.3, below(0.1));
            assertTrue(comingBack.hasRecovered());
        }

        @Test
        void fromTheDeepestSinceThePass() {
            passed(0, 0.5);
            follow(5, t -> below(2));
            follow(5, t -> below(0.9));
            assertTrue(comingBack.hasRecovered());
        }

        /** It stopped short by 0.16 dB: half of that has to be made good, however far it had been. */
        @ParameterizedTest
        @CsvSource({"0.09, false", "0.07, true"})
        void fromWhereItStoppedShort(double missingDb, boolean back) {
            passed(0, 2);
            rest(3, below(0.16));
            comingBack.missed((1 - below(0.16)) * Watched.VOLTS);
            assertEquals(back, stopsAt(missingDb));
        }
    }

    @Nested
    class Dips {

        @Test
        void theDipIsTheDeepestSinceThePass() {
            passed(0, 0.5);
            assertEquals(1 - below(0.5), comingBack.dip() / Watched.VOLTS, 1e-4);
            follow(5, t -> below(2));
            follow(5, t -> below(0.9));
            assertEquals(1 - below(2), comingBack.dip() / Watched.VOLTS, 1e-4);
        }

        /** The smoothed level leaves a beat that it knows out. */
        @Test
        void theDipOfABeatIsAsDeepAsMeansOfATwentiethOfASecondShow() {
            best.recall(new Best.Mark(Watched.VOLTS, 0, 0));
            move(10, t -> 1 + 0.01 * Math.sin(2 * Math.PI * 3 * t));
            comingBack.begin(Watched.VOLTS);
            follow(1, t -> 1 + 0.01 * Math.sin(2 * Math.PI * 3 * t));
            assertEquals(0.01, comingBack.dip() / Watched.VOLTS, 0.002);
        }
    }

    @Nested
    class SoonThere {

        /** It needs 0.3 s to stop, and hears of it half a reading late. */
        @Test
        void theWordComesAsLongBeforeTheTopAsAHandNeeds() {
            passed(0, 1);
            comeBack(1);
            assertEquals(1 - 0.31, backAfterSeconds, 0.021);
        }

        /** Twice as early, 0.1 dB below it. */
        @Test
        void toWhoOvershotAlthoughHeCameSlowlyItComesEarlier() {
            haste.returned(0);
            haste.passed(1_000_000_000L);
            passed(0, 1);
            follow(2, t -> below(0.25 * (2 - t) * (2 - t)));
            assertEquals(2 - 0.61, backAfterSeconds, 0.021);
        }

        /** Three tenths of a second before the top more is missing than a return may miss: 0.15 dB and two sigma. */
        @ParameterizedTest
        @CsvSource({"0, 0.0171", "0.005, 0.0271", "0.01, 0.0371"})
        void butNeverWithMoreMissingThanADwellWouldPass(double sigma, double missing) {
            passed(sigma, 6);
            comeBack(6);
            double atBack = 1 - below(backAtDb);
            assertTrue(atBack <= missing, "missing " + atBack);
            assertEquals(missing, atBack, 0.012, "the block before missed more");
            assertTrue(1 - below(6 * Math.pow(1 - backAfterSeconds + 0.04, 2)) > missing);
        }
    }

    /** Meanwhile the level goes on by 0.0075 dB beyond the mean over 0.32 s. */
    @Nested
    class Creeping {

        private static final double GOES_ON_DB = 0.0075;

        @Test
        void isBackWhereAThirdOfASecondMissesATwentieth() {
            passed(0, 1);
            assertEquals(0.05 - GOES_ON_DB, creepsBackAtDb(0.14), 0.003);
        }

        /** Each time that a lower top was crossed the set has drifted: a twentieth more may be missing of that top. */
        @Test
        void isBackAtADriftedTopATwentiethSoonerForEachTimeThatItWasLower() {
            double lowerDb = 0.02;
            passed(0, 1);
            comingBack.begin(below(lowerDb) * Watched.VOLTS);
            assertEquals(0.1 + lowerDb - GOES_ON_DB, creepsBackAtDb(0.145), 0.003);
            rest(3, below(1));
            comingBack.begin(Watched.VOLTS);
            assertEquals(0.1 - GOES_ON_DB, creepsBackAtDb(0.145), 0.003, "this top was as high as the best");
            comingBack.restart();
            passed(0, 1);
            assertEquals(0.05 - GOES_ON_DB, creepsBackAtDb(0.145), 0.003, "the next adjuster has not drifted");
        }

        /** The best itself is unsure by 0.01 of it, 0.087 dB; so the mean is one over 0.64 s, beyond which the level goes on twice as far. */
        @Test
        void isBackWithinTheUncertaintyOfTheBest() {
            passed(0.01, 1);
            assertEquals(0.087 - 2 * GOES_ON_DB, creepsBackAtDb(0.19), 0.003);
        }
    }

    /** Readings to and fro by 0.036 leave a mean over 0.64 s unsure by nearly as much as a return may miss; one over 0.32 s by more. */
    @Nested
    class InNoise {

        private final ToAndFro noise = new ToAndFro(0.036);

        /** Within a tenth of a decibel it would be back because it stands still. */
        @Test
        void aMeanOfTwiceAThirdOfASecondIsBackWithinItsUncertainty() {
            best.recall(new Best.Mark(Watched.VOLTS, 0, 0));
            move(4, t -> 0.8 + noise.next());
            comingBack.begin(Watched.VOLTS);
            turnedUp = true;
            double unsure = level.sight.sigmaOver(0.7, Watched.VOLTS) / Watched.VOLTS;
            assertTrue(unsure > 0.0125 && unsure < 0.0163, "unsure by " + unsure);
            move(4, t -> 1 - 1.05 * unsure + noise.next());
            follow(2, t -> 1 - 1.05 * unsure + noise.next());
            assertFalse(isBack());
            follow(2, t -> 1 - 0.95 * unsure + noise.next());
            assertTrue(isBack());
        }
    }

    @Nested
    class Hurries {

        private void hasOvershot() {
            haste.returned(0);
            haste.passed(1_000_000_000L);
            haste.restart();
            haste.returned(0);
            haste.comesSoon(0, 4, 1);
            haste.passed(1_000_000_000L);
        }

        /** Parabolas of 6 and 4 dB: 0.31 s before the top 0.58 and 0.38 dB are missing, of the 0.15 that may be. */
        @ParameterizedTest
        @CsvSource({"6, 1.9", "4, 1.57"})
        void whoIsSoonThereWithTooMuchMissingAndHearsByHowMuch(double dbAfterASecond, double factor) {
            hasOvershot();
            passed(0, dbAfterASecond);
            comeBack(dbAfterASecond);
            assertEquals(List.of("turn-slower"), told.words());
            assertEquals(factor, told.first("turn-slower").value(), 0.12);
        }

        @Test
        void notWhoIsNearBeforeThat() {
            hasOvershot();
            passed(0, 1);
            comeBack(1);
            assertEquals(List.of(), told.words());
        }

        /** At 6 dB a second it would be there at once. */
        @Test
        void notBeforeHalfOfItIsMadeGood() {
            hasOvershot();
            passed(0, 1);
            level.by(comingBack::look);
            move(0.06, t -> below(1 - 6 * t));
            assertEquals(List.of(), told.words());
            move(0.04, t -> below(0.64 - 6 * t));
            assertEquals(List.of("turn-slower"), told.words());
        }
    }
}
