package org.slugpeak.core.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.receiver.TrackingCircuit;
import org.slugpeak.core.receiver.TrackingPoints;

class ReceiverDialTest {

    private static final double TOLERANCE = 0.005;

    /** Where on the dial a station comes in: the gang position at which the oscillator is one IF above it. */
    private static KnownPoint heard(TrackingCircuit circuit, double intermediateHz, double stationHz) {
        double dial = new BrentSolver(1e-3)
                .solve(
                        200,
                        hz -> circuit.oscillatorHz(circuit.gangFarad(hz)) - intermediateHz - stationHz,
                        stationHz * 0.6,
                        stationHz * 1.7);
        return new KnownPoint(dial, stationHz, 0);
    }

    private static ReceiverDial dialOf(TrackingCircuit circuit, double intermediateHz, LowEndPart part) {
        return new ReceiverDial(
                intermediateHz,
                heard(circuit, intermediateHz, 600e3),
                heard(circuit, intermediateHz, 1000e3),
                heard(circuit, intermediateHz, 1400e3),
                part);
    }

    private static Optional<DialAdvice> about(List<DialAdvice> advice, DialAdvice.Adjuster adjuster) {
        return advice.stream().filter(each -> each.adjuster() == adjuster).findFirst();
    }

    /** Thousands of misaligned sets, whose design the advice does not know: never a wrong direction, never a silent fault. */
    @Nested
    class EverySimulatedSet {

        @Test
        void withTrimmerAndPadderWrong() {
            SplittableRandom random = new SplittableRandom(600_1400);
            int advised = 0;
            for (int round = 0; round < 2000; round++) {
                double intermediate = random.nextDouble(170e3, 475e3);
                TrackingCircuit right = randomDesign(random, intermediate);
                double trimmerError = random.nextDouble(-4e-12, 6e-12);
                double padderError = random.nextDouble(-0.15, 0.2);
                TrackingCircuit wrong = right.withTrimmer(right.trimmerFarad() + trimmerError)
                        .withPadder(right.padderFarad() * (1 + padderError));
                List<DialAdvice> advice =
                        dialOf(wrong, intermediate, LowEndPart.PADDER).advice(TOLERANCE);
                advised += assertDirection(about(advice, DialAdvice.Adjuster.TRIMMER), trimmerError < 0);
                advised += assertDirection(about(advice, DialAdvice.Adjuster.PADDER), padderError < 0);
            }
            assertTrue(advised > 2500, "the test must have seen much advice, not " + advised);
        }

        @Test
        void withTrimmerAndSlugWrong() {
            SplittableRandom random = new SplittableRandom(600_1401);
            int advised = 0;
            for (int round = 0; round < 2000; round++) {
                double intermediate = random.nextDouble(170e3, 475e3);
                TrackingCircuit right = randomDesign(random, intermediate);
                double trimmerError = random.nextDouble(-4e-12, 6e-12);
                double coilError = random.nextDouble(-0.06, 0.06);
                TrackingCircuit wrong = right.withTrimmer(right.trimmerFarad() + trimmerError)
                        .withOscillatorCoil(right.oscillatorCoilHenry() * (1 + coilError));
                List<DialAdvice> advice =
                        dialOf(wrong, intermediate, LowEndPart.SLUG).advice(TOLERANCE);
                advised += assertDirection(about(advice, DialAdvice.Adjuster.TRIMMER), trimmerError < 0);
                advised += assertDirection(about(advice, DialAdvice.Adjuster.SLUG), coilError < 0);
            }
            assertTrue(advised > 2500, "the test must have seen much advice, not " + advised);
        }

        @Test
        void isLeftAloneWhenItIsRight() {
            SplittableRandom random = new SplittableRandom(600_1402);
            for (int round = 0; round < 300; round++) {
                double intermediate = random.nextDouble(170e3, 475e3);
                TrackingCircuit right = exact(random.nextDouble(180e-6, 260e-6), intermediate);
                assertTrue(dialOf(right, intermediate, LowEndPart.PADDER)
                        .advice(TOLERANCE)
                        .isEmpty());
            }
        }

        private int assertDirection(Optional<DialAdvice> advice, boolean more) {
            advice.ifPresent(it -> assertEquals(more, it.more(), it::toString));
            return advice.isPresent() ? 1 : 0;
        }

        private TrackingCircuit randomDesign(SplittableRandom random, double intermediate) {
            return TrackingCircuit.exactAt(
                    random.nextDouble(180e-6, 260e-6),
                    intermediate,
                    new TrackingPoints(
                            random.nextDouble(590e3, 610e3),
                            random.nextDouble(990e3, 1010e3),
                            random.nextDouble(1390e3, 1410e3)));
        }
    }

    private static TrackingCircuit exact(double coilHenry, double intermediateHz) {
        return TrackingCircuit.exactAt(coilHenry, intermediateHz, new TrackingPoints(600e3, 1000e3, 1400e3));
    }

    @Test
    void tooMuchTrimmerAloneIsBlamedOnTheTrimmerAlone() {
        TrackingCircuit right = exact(220e-6, 455e3);
        TrackingCircuit wrong = right.withTrimmer(right.trimmerFarad() + 3e-12);
        List<DialAdvice> advice = dialOf(wrong, 455e3, LowEndPart.PADDER).advice(TOLERANCE);
        assertEquals(1, advice.size());
        assertEquals(DialAdvice.Adjuster.TRIMMER, advice.get(0).adjuster());
        assertFalse(advice.get(0).more());
    }

    @Test
    void padderAloneIsNotBlamedOnTheTrimmerAlthoughTheHighEndIsOffToo() {
        TrackingCircuit right = exact(220e-6, 455e3);
        TrackingCircuit wrong = right.withPadder(right.padderFarad() * 0.9);
        ReceiverDial dial = dialOf(wrong, 455e3, LowEndPart.PADDER);
        assertTrue(Math.abs(dial.high().dialErrorHz()) > 7e3, "the high end is off as well");
        List<DialAdvice> advice = dial.advice(TOLERANCE);
        assertEquals(
                List.of(DialAdvice.Adjuster.PADDER),
                advice.stream()
                        .map(DialAdvice::adjuster)
                        .filter(each -> each != DialAdvice.Adjuster.POINTER)
                        .toList());
        assertTrue(advice.get(advice.size() - 1).more());
    }

    /** The invented table set: 600/1000/1400 kHz found at 582/1016/1438. */
    @Test
    void tableSetWantsLessTrimmerAndMorePadder() {
        ReceiverDial dial = new ReceiverDial(
                455e3,
                new KnownPoint(582e3, 600e3, 0),
                new KnownPoint(1016e3, 1000e3, 0),
                new KnownPoint(1438e3, 1400e3, 0),
                LowEndPart.PADDER);
        List<DialAdvice> advice = dial.advice(TOLERANCE);
        assertFalse(about(advice, DialAdvice.Adjuster.TRIMMER).orElseThrow().more());
        assertTrue(about(advice, DialAdvice.Adjuster.PADDER).orElseThrow().more());
        assertEquals(DialAdvice.Adjuster.TRIMMER, advice.get(0).adjuster(), "the greater effect first");
    }

    @Test
    void samePercentageEverywhereMayBeThePointer() {
        ReceiverDial dial = new ReceiverDial(
                455e3,
                new KnownPoint(612e3, 600e3, 0),
                new KnownPoint(1020e3, 1000e3, 0),
                new KnownPoint(1428e3, 1400e3, 0),
                LowEndPart.PADDER);
        assertEquals(DialAdvice.Adjuster.POINTER, dial.advice(TOLERANCE).get(0).adjuster());
    }

    @Test
    void middleAloneIsNoAdjustersFault() {
        ReceiverDial dial = new ReceiverDial(
                455e3,
                new KnownPoint(600e3, 600e3, 0),
                new KnownPoint(1015e3, 1000e3, 0),
                new KnownPoint(1400e3, 1400e3, 0),
                LowEndPart.PADDER);
        assertEquals(
                List.of(DialAdvice.Adjuster.MIDDLE),
                dial.advice(TOLERANCE).stream().map(DialAdvice::adjuster).toList());
    }

    @Test
    void errorsBeyondAnyCircuitStillGiveADirectionForEachEnd() {
        ReceiverDial dial = new ReceiverDial(
                455e3,
                new KnownPoint(1190e3, 600e3, 0),
                new KnownPoint(1200e3, 1000e3, 0),
                new KnownPoint(1210e3, 1400e3, 0),
                LowEndPart.PADDER);
        assertFalse(dial.advice(TOLERANCE).isEmpty());
    }

    @Test
    void refusesPointsOutOfOrder() {
        KnownPoint point = new KnownPoint(600e3, 600e3, 0);
        assertThrows(
                IllegalArgumentException.class, () -> new ReceiverDial(455e3, point, point, point, LowEndPart.SLUG));
    }
}
