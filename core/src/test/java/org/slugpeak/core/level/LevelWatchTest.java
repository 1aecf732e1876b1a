package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;

class LevelWatchTest {

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /** The finder's scale and back: above rest, as if the generator had never been changed. */
    @Test
    void whatTheFinderSeesIsReadBackAsItStoodOnTheMeter() {
        Meter meter = new Meter(3, 1e-6).rest(1, -0.2).command(LevelCommand.cut(0.5));
        meter.read(4, 0.3);
        assertEquals(0.5, meter.watch.toFinder(0.05) / meter.watch.toFinder(0.3), 1e-3);
        assertEquals(0.37, meter.watch.fromFinder(meter.watch.toFinder(0.37)), 1e-12);
    }

    @Nested
    class Rest {

        @Test
        void decibelsAreRightWithinATenthForAnyRestUpToHalfAVolt() {
            SplittableRandom random = new SplittableRandom(11);
            for (int i = 0; i < 100; i++) {
                double rest = random.nextDouble(-0.5, 0.5);
                double signal = Math.copySign(random.nextDouble(0.3, 2), rest);
                double gain = random.nextDouble(1.1, 3);
                Meter meter = new Meter(i, 0.001).rest(signal, rest);
                double measured = db(meter.watch.toFinder(signal * gain + rest) / meter.watch.toFinder(signal + rest));
                assertEquals(db(gain), measured, 0.1, "rest " + rest + " signal " + signal);
            }
        }

        @Test
        void theFinderForgetsItsBestOnceBecauseZeroHasMoved() {
            Meter meter = new Meter(1, Meter.NOISE).rest(-1, -0.22);
            assertTrue(meter.watch.takeZeroMoved());
            assertFalse(meter.watch.takeZeroMoved());
            assertEquals(-0.22, meter.told.first("rest").amount(), 0.001);
        }

        @Test
        void withoutItThePassAtTheDetectorIsCalledDoubtfulOnce() {
            Meter meter = new Meter(1, Meter.NOISE).command(LevelCommand.at(MeterPoint.DETECTOR));
            meter.read(1, -1).watch.passed(1, -1);
            meter.watch.passed(2, -1);
            assertEquals(1, meter.told.all("no-rest").size());
        }

        @Test
        void nothingIsDoubtfulWhereNobodySaidWhereTheMeterIs() {
            Meter meter = new Meter(1, Meter.NOISE).read(1, -1);
            meter.watch.passed(1, -1);
            assertFalse(meter.told.heard("no-rest"));
        }

        /** Two points of a set rest at different voltages; the voice coil, where nothing rests, is never called doubtful. */
        @Test
        void ofOnePointIsNotSubtractedAtAnotherAndIsKnownStillWhenTheMeterComesBack() {
            Meter meter = new Meter(1, 0)
                    .command(LevelCommand.at(MeterPoint.DETECTOR))
                    .rest(-1, -0.22);
            meter.watch.takeZeroMoved();
            meter.command(LevelCommand.at(MeterPoint.VOICE_COIL));
            assertTrue(meter.watch.takeZeroMoved());
            assertEquals(0.4, meter.watch.toFinder(0.4), 1e-9);
            meter.watch.passed(1, 0.4);
            meter.command(LevelCommand.at(MeterPoint.DETECTOR));
            assertEquals(-1, meter.watch.toFinder(-1.22), 1e-9);
            meter.watch.passed(2, -1);
            assertFalse(meter.told.heard("no-rest"));
            meter.command(LevelCommand.at(MeterPoint.AVC)).watch.passed(3, -1);
            assertTrue(meter.told.heard("no-rest"));
        }

        @Test
        void staysWhereTheSamePointIsNamedAgain() {
            Meter meter = new Meter(1, 0)
                    .command(LevelCommand.at(MeterPoint.DETECTOR))
                    .rest(-1, -0.22);
            meter.watch.takeZeroMoved();
            meter.command(LevelCommand.at(MeterPoint.DETECTOR));
            assertFalse(meter.watch.takeZeroMoved());
            assertEquals(-1, meter.watch.toFinder(-1.22), 1e-9);
        }

        @Test
        void wobbleWithoutASignalIsPossiblyHum() {
            Meter meter = new Meter(1, Meter.NOISE)
                    .command(LevelCommand.check(CheckKind.REST))
                    .read(6, at -> 1 + 0.1 * Math.sin(9.4 * at))
                    .read(6, at -> 0.2 + 0.1 * Math.sin(9.4 * at))
                    .read(2, 1);
            assertTrue(meter.told.heard("possible-hum"));
        }
    }

    @Nested
    class Skirts {

        private Meter compared(Meter meter) {
            return meter.command(LevelCommand.check(CheckKind.SKIRTS))
                    .read(2, 1)
                    .done()
                    .read(2, 0.1)
                    .done()
                    .read(2, 0.1)
                    .done();
        }

        /** An IF strip that falls by 20 dB within 5 kHz regenerates; a crystal filter does so within 0.5 kHz, and may. */
        @Test
        void raiseASuspicionOnlyAtTheDistanceWhereItIsKnownHowSteepTheyMayBe() {
            assertTrue(compared(new Meter(1, 0)).told.heard("possible-regeneration"));
            Meter crystal = compared(new Meter(1, 0).command(LevelCommand.skirtsAt(500)));
            assertFalse(crystal.told.heard("possible-regeneration"));
            assertTrue(crystal.told.heard("skirts"));
        }
    }

    @Nested
    class Level {

        @Test
        void aSecondCheckThatIsGoodTakesBackWhatTheFirstOneSaid() {
            Meter meter = new Meter(1, 0.001).level(1, 0.4);
            assertTrue(meter.told.heard("possible-too-strong"));
            assertFalse(meter.told.heard("no-longer-possible"));
            meter.read(1, 0.3).level(0.3, 1);
            assertEquals(
                    1, meter.told.all("cleared").size(), meter.told.topics().toString());
            assertEquals(1, meter.told.all("no-longer-possible").size());
            assertTrue(meter.watch.letsFinderSee());
        }

        @ParameterizedTest
        @CsvSource({
            "1, false, false",
            "1.2, false, false",
            "0.95, true, false",
            "0.75, true, false",
            "0.55, true, false",
            "0.45, true, true"
        })
        void noDetectorFollowsByLessThanTheGeneratorSoThatWarnsAndBelowAHalfRefuses(
                double slope, boolean warns, boolean refuses) {
            Meter meter = new Meter(3, 0.001).level(1, slope);
            assertEquals(warns, meter.told.heard("flattening"));
            assertEquals(warns, meter.told.heard("possible-too-strong"));
            assertEquals(refuses, !meter.watch.letsFinderSee());
        }

        @Test
        void slopesAboveOnePointThreeAreTooWeakOrSquareLaw() {
            Meter meter = new Meter(3, 0.001).level(0.1, 1.6);
            double slope = meter.told.first("level").amount();
            assertEquals(1.6, slope, 0.02);
            assertTrue(slope > CheckFigures.WEAK_SLOPE);
        }

        @Test
        void whatTheFirstHalvingShowsNeedsNoSecond() {
            Meter meter = new Meter(3, 0.001).level(1, 0.9);
            assertEquals(
                    List.of(0.0),
                    meter.told.all("ask").stream().map(Told.Line::amount).toList());
        }

        @ParameterizedTest(name = "first {0} dB, second {1} dB: {2}")
        @CsvSource({"7.05, 7.68, false", "7.91, 9.47, false", "6.51, 8.87, true", "6.10, 7.60, true"})
        void aFallThatCatchesUpOnTheSecondHalvingWasHeldBack(double firstDb, double secondDb, boolean warns) {
            Meter meter = new Meter(3, 0.001).halvings(1, firstDb, secondDb);
            assertEquals(warns, meter.told.heard("flattening"));
            assertEquals(warns, meter.told.heard("possible-too-strong"));
        }

        @Test
        void whoPutsTheGeneratorBackInsteadOfHalvingItAgainIsJudgedByOneHalving() {
            Meter meter = new Meter(3, 0.001).command(LevelCommand.check(CheckKind.LEVEL));
            meter.read(2, 1).read(3, 0.45).read(3, 1);
            assertEquals(
                    Decibels.of(1 / 0.45) / Decibels.of(2),
                    meter.told.first("level").amount(),
                    0.01);
            assertFalse(meter.told.heard("flattening"));
            assertTrue(meter.told.heard("check-over"));
        }

        @Test
        void aRefusalEndsWithTheCut() {
            Meter meter = new Meter(3, 0.001).level(1, 0.4).command(LevelCommand.cut(0.2));
            meter.read(3, 0.2);
            assertTrue(meter.told.heard("cleared"));
            assertTrue(meter.watch.letsFinderSee());
        }

        @Test
        void theFinderSeesNothingWhileACheckIsUnderWay() {
            Meter meter = new Meter(3, 0.001).command(LevelCommand.check(CheckKind.LEVEL));
            meter.read(2, 1);
            assertFalse(meter.watch.letsFinderSee());
            meter.read(3, 0.5).read(3, 0.25).read(2, 1);
            assertTrue(meter.watch.letsFinderSee());
        }

        @Test
        void aCheckThatNobodyFollowsIsDropped() {
            Meter meter = new Meter(3, 0.001).command(LevelCommand.check(CheckKind.LEVEL));
            meter.read(30, 1);
            assertTrue(meter.told.heard("check-dropped"));
            assertTrue(meter.watch.letsFinderSee());
        }
    }

    @Nested
    class Drifting {

        @Test
        void slowMovementIsDriftWithItsSpeed() {
            Meter meter = new Meter(7, Meter.NOISE).read(70, at -> Math.pow(10, -0.4 * at / 60 / 20));
            assertEquals(-0.4, meter.told.first("drift").amount(), 0.05);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0.2, -0.2, 1, -1})
        void turningIsNoDrift(double dbPerSecond) {
            Meter meter = new Meter(7, Meter.NOISE).read(20, at -> Math.pow(10, dbPerSecond * at / 20));
            assertFalse(meter.told.heard("drift"));
        }

        @Test
        void aSteadyReadingNeitherDriftsNorSettles() {
            Meter meter = new Meter(7, Meter.NOISE).read(300, 1);
            assertFalse(meter.told.heard("drift"));
            assertFalse(meter.told.heard("settled"));
        }

        @Test
        void theSetIsCalledSettledWhenLessThanAFifthOfADecibelIsLeftInFiveMinutes() {
            // 1 dB in all with a time constant of 2 minutes: 0.04 dB a minute is left at 2 ln(12.5) = 5.05 minutes.
            Meter meter = new Meter(7, Meter.NOISE).read(600, at -> Math.pow(10, -(1 - Math.exp(-at / 120)) / 20));
            double minutes = meter.told.first("settled").tNanos() / 60e9;
            assertTrue(minutes > 4.5 && minutes < 7, "settled at " + minutes);
        }

        @Test
        void theMedianOfSlopesDoesNotMindOddSeconds() {
            double[] values = new double[60];
            for (int i = 0; i < values.length; i++) {
                values[i] = i % 7 == 0 ? 40 : 3 + 0.25 * i;
            }
            assertEquals(0.25, DriftWatch.medianSlope(values), 0.02);
        }
    }

    @Nested
    class Weakness {

        @Test
        void readingsWithTwentyPerCentNoiseAreTooWeakAndSayByHowMuch() {
            Meter meter = new Meter(9, 0.2).read(5, 0.05);
            assertEquals(14, meter.told.first("weak").amount(), 2);
            assertEquals(1, meter.told.all("weak").size());
        }

        @Test
        void goodReadingsAreNot() {
            assertFalse(new Meter(9, Meter.NOISE).read(60, 0.05).told.heard("weak"));
        }

        @Test
        void aDipIsAllowedToBeWeak() {
            Told told = new Told();
            LevelWatch watch = new LevelWatch(Seek.DIP, told);
            SplittableRandom random = new SplittableRandom(1);
            for (int i = 0; i < 500; i++) {
                watch.accept(i * 20_000_000L, random.nextGaussian(), Condition.OK);
            }
            assertTrue(told.topics().isEmpty());
        }
    }

    @Nested
    class Suspicions {

        @Test
        void twoJumpsOfThreeDecibelsArePossiblyAMicaCapacitor() {
            Meter meter = new Meter(2, Meter.NOISE).read(5, 1).read(5, 0.7);
            assertFalse(meter.told.heard("possible-mica"));
            meter.read(5, 1);
            assertTrue(meter.told.heard("possible-mica"));
        }

        @Test
        void turningIsNoJump() {
            Meter meter = new Meter(2, Meter.NOISE);
            for (int i = 0; i < 5; i++) {
                meter.read(2, at -> 1 - 0.25 * at).read(1, 0.5).read(2, at -> 0.5 + 0.25 * at);
            }
            assertFalse(meter.told.heard("possible-mica"));
        }

        @Test
        void aFlatTravelAccusesThePadderOrTheWindingByItsName() {
            Meter padder = new Meter(2, Meter.NOISE);
            padder.watch.adjusterBegun("C3 padder");
            padder.watch.noPeak(1, NoPeakReason.FLAT);
            assertTrue(padder.told.heard("possible-padder"));
            Meter slug = new Meter(2, Meter.NOISE);
            slug.watch.adjusterBegun("T2 top");
            slug.watch.noPeak(1, NoPeakReason.FLAT);
            assertTrue(slug.told.heard("possible-winding"));
        }

        @Test
        void aFlatStreamWithoutAnAdjusterAccusesNothing() {
            Meter meter = new Meter(2, Meter.NOISE);
            meter.watch.noPeak(1, NoPeakReason.FLAT);
            assertTrue(meter.told.topics().isEmpty());
        }

        @Test
        void whileOneSuspicionStandsNoOtherIsRaised() {
            Meter meter = new Meter(2, Meter.NOISE);
            meter.watch.adjusterBegun("T2 top");
            meter.watch.noPeak(1, NoPeakReason.FLAT);
            meter.watch.twoPeaks(2, 10);
            assertEquals(List.of("possible-winding"), meter.told.topics());
            meter.command(new LevelCommand(LevelCommand.Verb.REPAIRED, ""))
                    .watch
                    .twoPeaks(3, 10);
            assertTrue(meter.told.heard("possible-slug-end"));
        }

        /** 1 Mohm in series: a meter of 10 Mohm falls to 10/11, one of 1 Mohm to a half (Ohm's law). */
        @ParameterizedTest
        @CsvSource({"10e6, false", "1e6, true"})
        void aMeterThatFallsTooFarBehindOneMegohmLoads(double ohm, boolean loads) {
            Meter meter = new Meter(2, 0.0005)
                    .command(LevelCommand.check(CheckKind.LOADING))
                    .read(2, 1)
                    .done()
                    .read(3, ohm / (ohm + 1e6))
                    .done();
            assertEquals(ohm, meter.told.first("loading").amount(), 0.05 * ohm);
            assertEquals(loads, meter.told.heard("possible-loading"));
        }

        /** Off, discharge, clip, warm up: nobody is hurried, and nothing is made of the readings meanwhile. */
        @Test
        void aResistorIsPutInAndTakenOutWithTheSetOff() {
            Meter meter = new Meter(2, 0.0005)
                    .command(LevelCommand.check(CheckKind.LOADING))
                    .read(2, 1)
                    .read(120, 0)
                    .read(60, 10 / 11.0)
                    .done()
                    .read(3, 10 / 11.0)
                    .read(120, 0);
            assertFalse(meter.watch.letsFinderSee(), "the resistor is still in");
            meter.read(60, 1).done();
            assertEquals(10e6, meter.told.first("loading").amount(), 0.5e6);
            assertTrue(meter.told.heard("check-over") && meter.watch.letsFinderSee());
        }

        @ParameterizedTest
        @CsvSource({"IMAGE, 0.08, false", "IMAGE, 0.002, true"})
        void oneMoveTellsTheImage(CheckKind kind, double left, boolean suspected) {
            Meter meter = new Meter(2, 0.001)
                    .command(LevelCommand.check(kind))
                    .read(2, 1)
                    .done()
                    .read(3, left)
                    .done();
            assertEquals(suspected, meter.told.heard("possible-" + kind.code()));
        }

        @ParameterizedTest
        @CsvSource({
            "HARMONIC, 0.93, 0.92, possible-harmonic, false",
            "HARMONIC, 0.58, 0.57, possible-harmonic, true",
            // Twice critically coupled pairs 2 kHz off tune: 4.2 dB down on one side, 0.5 dB up on the other.
            "HARMONIC, 0.62, 1.06, possible-harmonic, false",
            "SKIRTS, 0.35, 0.36, possible-regeneration, false",
            "SKIRTS, 0.05, 0.06, possible-regeneration, true",
            "OTHER_IF, 0.6, 0.5, possible-wrong-if, false",
            "OTHER_IF, 3, 0.1, possible-wrong-if, true"
        })
        void twoMovesTellSkirtsHarmonicAndAnotherIntermediateFrequency(
                CheckKind kind, double first, double second, String topic, boolean suspected) {
            Meter meter = new Meter(2, 0.001)
                    .command(LevelCommand.check(kind))
                    .read(2, 1)
                    .done()
                    .read(3, first)
                    .done()
                    .read(3, second)
                    .done();
            assertEquals(suspected, meter.told.heard(topic), meter.told.topics().toString());
        }
    }

    @Nested
    class Overload {

        @Test
        void isSaidOnceAndClearedOnce() {
            Told told = new Told();
            LevelWatch watch = new LevelWatch(Seek.PEAK, told);
            watch.accept(1, 1, Condition.OK);
            watch.accept(2, 0, Condition.OVER_RANGE);
            watch.accept(3, 0, Condition.OVER_RANGE);
            watch.accept(4, 0, Condition.NO_VALUE);
            watch.accept(5, 1, Condition.OK);
            assertEquals(List.of("over-range", "cleared"), told.topics());
        }
    }
}
