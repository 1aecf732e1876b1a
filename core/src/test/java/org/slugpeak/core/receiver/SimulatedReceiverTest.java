package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.word.Refused;

/** The invented set as a whole: it must behave as its data sheet says, and its faults as the trade knows them. */
class SimulatedReceiverTest {

    private static final long TICK_NANOS = 10_000_000;

    /** At the converter grid for a rise of 1 V, aligned. */
    private static final double WORKING_MICROVOLTS = 77.5;

    private static SimulatedReceiver set(Fault... faults) {
        return new SimulatedReceiver(Tarnfield.design(), Set.of(faults), 1);
    }

    private static SimulatedReceiver aligned(Fault... faults) {
        SimulatedReceiver receiver = set(faults);
        for (Part part : Part.values()) {
            receiver.set(part, 0);
        }
        return receiver;
    }

    private static void feed(SimulatedReceiver receiver, double volts) {
        receiver.feed(new Generator(Tarnfield.IF_HZ, volts, false, Generator.Lead.CONVERTER_GRID));
    }

    private static double settle(SimulatedReceiver receiver, double seconds) {
        List<Double> volts = new ArrayList<>();
        for (long t = 0; t < seconds * 1e9; t += TICK_NANOS) {
            receiver.step(t);
            volts.add(receiver.detectorVolts());
        }
        int half = volts.size() / 2;
        return volts.subList(half, volts.size()).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    @Nested
    class DataSheet {

        @Test
        void asItCameItIsInsensitiveAndTwoHumped() {
            IfPerformance came = set().performance();
            assertEquals(620e-6, came.sensitivityVolts(), 10e-6);
            assertEquals(450.3e3, came.strongestHz(), 200);
            assertEquals(446.4e3, came.lowerHz(), 200);
            assertEquals(464.8e3, came.upperHz(), 400);
        }

        @Test
        void alignedItNeedsSeventyEightMicrovoltsAndPassesNineKilohertz() {
            IfPerformance good = aligned().performance();
            assertEquals(WORKING_MICROVOLTS * 1e-6, good.sensitivityVolts(), 0.5e-6);
            assertEquals(8.7e3, good.widthHz(), 200);
            assertEquals(455e3, good.centreHz(), 150);
        }

        @Test
        void peakingFromTheDetectorBackGainsWhatTheDataSheetSays() {
            SimulatedReceiver receiver = set();
            assertEquals(8.08, peak(receiver, Part.T2_TOP), 0.02);
            assertEquals(1.04, peak(receiver, Part.T2_BOTTOM), 0.02);
            assertEquals(5.56, peak(receiver, Part.T1_TOP), 0.02);
            assertEquals(3.27, peak(receiver, Part.T1_BOTTOM), 0.02);
            double second = peak(receiver, Part.T2_TOP)
                    + peak(receiver, Part.T2_BOTTOM)
                    + peak(receiver, Part.T1_TOP)
                    + peak(receiver, Part.T1_BOTTOM);
            assertTrue(second > 0 && second < 0.2, "second round " + second);
        }

        private static double peak(SimulatedReceiver receiver, Part part) {
            double before = receiver.stripGain(Tarnfield.IF_HZ);
            double best = receiver.turns(part);
            double most = before;
            for (double turns = -2.6; turns < 2.6; turns += 0.001) {
                receiver.set(part, turns);
                if (receiver.stripGain(Tarnfield.IF_HZ) > most) {
                    most = receiver.stripGain(Tarnfield.IF_HZ);
                    best = turns;
                }
            }
            receiver.set(part, best);
            return db(most / before);
        }

        @Test
        void aTurnOfASlugMovesAWindingBySevenKilohertz() {
            SlugLaw law = Tarnfield.slugLaw();
            double perTurn = (law.inductanceChange(0.05) - law.inductanceChange(-0.05)) / 0.1 / 2 * Tarnfield.IF_HZ;
            assertEquals(7e3, perTurn, 500);
        }

        @Test
        void aPositionForAWantedChangeGivesThatChange() {
            SlugLaw law = Tarnfield.slugLaw();
            for (double wanted = -0.05; wanted < 0.035; wanted += 0.003) {
                assertEquals(wanted, law.inductanceChange(law.turnsFor(wanted)), 1e-9);
            }
        }
    }

    @Nested
    class Detector {

        /** The noise of the converter, 100 mV at the detector, adds 16 mV to the rest of 0.22 V. */
        @Test
        void restsAtTheContactPotentialAndGoesNegativeWithTheSignal() {
            SimulatedReceiver receiver = aligned();
            assertEquals(-0.236, settle(receiver, 1), 0.002);
            feed(receiver, WORKING_MICROVOLTS * 1e-6);
            assertEquals(-1.22, settle(receiver, 1), 0.01);
        }

        /** The mean over T of noise beside a strong carrier spreads as sqrt(4 k T R/T), times gain and slope of the detector. */
        @Test
        void noiseIsTheThermalNoiseOfTheConverter() {
            SimulatedReceiver receiver = aligned();
            feed(receiver, WORKING_MICROVOLTS * 1e-6);
            settle(receiver, 1);
            double[] volts = new double[5000];
            for (int i = 0; i < volts.length; i++) {
                receiver.step(1_000_000_000L + i * TICK_NANOS);
                volts[i] = receiver.detectorVolts();
            }
            EnvelopeDetector detector = Tarnfield.design().detector();
            double carrier = detector.carrierPeakVolts(1);
            double slope = (detector.riseVolts(carrier + 0.01) - detector.riseVolts(carrier - 0.01)) / 0.02;
            double microvolts = Math.sqrt(4 * 1.380649e-23 * 290 * 200e3 / (TICK_NANOS * 1e-9)) * 1e6;
            double expected = microvolts / (WORKING_MICROVOLTS * Math.sqrt(2)) * carrier * slope;
            assertEquals(expected, Math.sqrt(StatUtils.variance(volts)), 0.06 * expected);
        }

        @Test
        void theGainControlFlattensAFivefoldSignal() {
            SimulatedReceiver receiver = aligned();
            feed(receiver, 5 * WORKING_MICROVOLTS * 1e-6);
            double strong = settle(receiver, 3) + 0.22;
            feed(receiver, 2.5 * WORKING_MICROVOLTS * 1e-6);
            double half = settle(receiver, 3) + 0.22;
            assertEquals(0.4, db(strong / half) / db(2), 0.1);
        }

        @Test
        void theGainControlFollowsWithItsTimeConstant() {
            SimulatedReceiver receiver = aligned();
            feed(receiver, 20 * WORKING_MICROVOLTS * 1e-6);
            receiver.step(0);
            double atOnce = -receiver.detectorVolts();
            double settled = -settle(receiver, 3);
            assertTrue(atOnce > 2 * settled, atOnce + " then " + settled);
        }
    }

    @Nested
    class Audio {

        @Test
        void modulationIsHeardAndAStrongOneClips() {
            SimulatedReceiver receiver = aligned();
            receiver.feed(
                    new Generator(Tarnfield.IF_HZ, WORKING_MICROVOLTS * 1e-6, true, Generator.Lead.CONVERTER_GRID));
            settle(receiver, 1);
            assertTrue(receiver.voiceCoilVolts() > 0.4, "volts " + receiver.voiceCoilVolts());
            assertTrue(!receiver.clips());
            receiver.feed(receiver.generator().times(30));
            settle(receiver, 3);
            assertTrue(receiver.clips());
        }

        @Test
        void withoutModulationOnlyHumIsLeft() {
            SimulatedReceiver receiver = aligned();
            feed(receiver, WORKING_MICROVOLTS * 1e-6);
            settle(receiver, 1);
            assertEquals(3e-3, receiver.voiceCoilVolts(), 1e-6);
        }
    }

    @Nested
    class RadioFrequency {

        private static double heard(SimulatedReceiver receiver, double dialHz, double generatorHz) {
            receiver.tune(dialHz);
            receiver.feed(new Generator(generatorHz, 1e-6, false, Generator.Lead.AERIAL));
            return 1 / receiver.generatorVoltsFor(1);
        }

        @Test
        void theImageIsHeardWeakerTwiceTheIntermediateFrequencyLower() {
            double wanted = heard(aligned(), 16e6, 16e6);
            double image = heard(aligned(), 16e6 - 2 * Tarnfield.IF_HZ, 16e6);
            assertEquals(19, db(wanted / image), 2);
        }

        @Test
        void aSetOnTheImageHearsNothingThere() {
            SimulatedReceiver receiver = aligned();
            double farad = Tarnfield.design().front().shortWaveFarad() * (Math.pow(16.455 / 15.545, 2) - 1);
            receiver.set(Part.C5, farad / Tarnfield.design().front().trimmerFaradPerTurn());
            double wanted = heard(receiver, 16e6, 16e6);
            double image = heard(receiver, 16e6 - 2 * Tarnfield.IF_HZ, 16e6);
            assertTrue(db(wanted / image) > 40, "dB " + db(wanted / image));
        }

        @Test
        void theSecondHarmonicOfHalfTheFrequencyIsHeardFarTooWeakly() {
            double fundamental = heard(aligned(), 1400e3, 1400e3);
            double harmonic = heard(aligned(), 1400e3, 700e3);
            assertEquals(26, db(fundamental / harmonic), 1);
        }

        @Test
        void theOscillatorDriftsWhileTheSetWarmsUp() {
            SimulatedReceiver receiver = aligned();
            receiver.warmFor(0);
            receiver.tune(1e6);
            receiver.step(0);
            double cold = receiver.oscillatorHz();
            receiver.step((long) 540e9);
            assertEquals(14e3 * (1 - Math.exp(-1)), receiver.oscillatorHz() - cold, 1);
        }
    }

    @Nested
    class Faults {

        @ParameterizedTest
        @EnumSource(Fault.class)
        void eachHasAWordOfItsOwn(Fault fault) throws Refused {
            assertEquals(fault, Fault.ofCode(fault.code()));
        }

        @Test
        void anOpenSecondaryLeavesItsSlugWithoutEffect() {
            SimulatedReceiver receiver = set(Fault.SECONDARY);
            double before = receiver.stripGain(Tarnfield.IF_HZ);
            receiver.set(Part.T2_TOP, 1);
            assertEquals(before, receiver.stripGain(Tarnfield.IF_HZ));
            receiver.set(Part.T2_BOTTOM, 0);
            assertTrue(receiver.stripGain(Tarnfield.IF_HZ) > before);
        }

        @Test
        void anOpenPadderLeavesTheOscillatorWhereItIs() {
            SimulatedReceiver receiver = set(Fault.PADDER);
            receiver.tune(600e3);
            double before = receiver.oscillatorHz();
            receiver.set(Part.C3, 3);
            assertEquals(before, receiver.oscillatorHz());
        }

        @Test
        void regenerationRaisesTheGainAndNarrowsTheBand() {
            IfPerformance sound = aligned().performance();
            IfPerformance feedsBack = aligned(Fault.REGENERATION).performance();
            assertTrue(feedsBack.sensitivityVolts() < sound.sensitivityVolts() / 2);
            assertTrue(feedsBack.widthHz() < 0.6 * sound.widthHz());
        }

        @Test
        void aMicaCapacitorJumpsByTwoToFiveDecibelsEveryTwentyToSixtySeconds() {
            SimulatedReceiver receiver = aligned(Fault.MICA);
            feed(receiver, WORKING_MICROVOLTS * 1e-6);
            double still = receiver.stripGain(Tarnfield.IF_HZ);
            int jumps = 0;
            double last = still;
            for (long t = 0; t < 600e9; t += TICK_NANOS) {
                receiver.step(t);
                double now = receiver.stripGain(Tarnfield.IF_HZ);
                if (now != last) {
                    jumps++;
                    assertEquals(3.3, Math.abs(db(now / last)), 1.7);
                }
                last = now;
            }
            assertTrue(jumps >= 10 && jumps <= 30, "jumps " + jumps);
        }

        @Test
        void aMeterOfOneMegohmDampsTheLastWinding() {
            SimulatedReceiver loaded = aligned();
            loaded.load(1e6);
            assertTrue(loaded.stripGain(Tarnfield.IF_HZ) < 0.9 * aligned().stripGain(Tarnfield.IF_HZ));
        }

        @Test
        void theSecondSlugPositionIsFiveAndAHalfTurnsOnAndCouplesTighter() {
            SimulatedReceiver receiver = aligned();
            double right = receiver.stripGain(Tarnfield.IF_HZ);
            receiver.set(Part.T1_TOP, Tarnfield.slugLaw().secondPositionTurns());
            double wrong = receiver.stripGain(Tarnfield.IF_HZ);
            receiver.set(Part.T1_TOP, Tarnfield.slugLaw().secondPositionTurns() / 2);
            assertTrue(receiver.stripGain(Tarnfield.IF_HZ) < wrong / Math.sqrt(2));
            assertTrue(wrong < right);
        }
    }

    /** The figure of the reference data set; the rest follows from less capacitance at the high end. */
    @Test
    void aScrewdriverAtTheOscillatorLowersItByEightHundredHertzAtOneMegahertz() {
        SimulatedReceiver receiver =
                new SimulatedReceiver(Tarnfield.design().withHand(Tarnfield.METAL_TOOL), Set.of(), 1);
        for (double[] expected : new double[][] {{1000e3, -800, 50}, {1400e3, -2000, 200}}) {
            receiver.tune(expected[0]);
            receiver.hand(Optional.empty());
            double without = receiver.oscillatorHz();
            receiver.hand(Optional.of(Part.C2));
            assertEquals(expected[1], receiver.oscillatorHz() - without, expected[2]);
        }
    }

    @Test
    void aHandInTheCanShiftsTheCircuitUntilItLeaves() {
        SimulatedReceiver receiver = aligned();
        receiver.set(Part.T2_TOP, 0.5);
        double alone = receiver.stripGain(Tarnfield.IF_HZ);
        receiver.hand(Optional.of(Part.T2_TOP));
        assertTrue(receiver.stripGain(Tarnfield.IF_HZ) < alone);
        receiver.hand(Optional.empty());
        assertEquals(alone, receiver.stripGain(Tarnfield.IF_HZ));
    }

    @ParameterizedTest
    @CsvSource({"3, 0", "4, 1", "10, 7", "-3, 0", "-10, -7"})
    void backlashIsTakenUpBeforeAnythingFollows(double moved, double followed) {
        Backlash slug = new Backlash(6, 0);
        slug.move(moved);
        assertEquals(followed, slug.position(), 1e-12);
    }

    @Test
    void aReversalLosesTheWholePlay() {
        Backlash slug = new Backlash(6, 0);
        slug.move(20);
        double there = slug.position();
        slug.move(-6);
        assertEquals(there, slug.position());
        slug.move(-1);
        assertEquals(there - 1, slug.position());
    }
}
