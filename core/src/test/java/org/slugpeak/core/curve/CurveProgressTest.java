package org.slugpeak.core.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;

class CurveProgressTest {

    private static final List<Double> THREE = List.of(450e3, 455e3, 460e3);
    private static final long TICK_NANOS = 20_000_000;

    private final SplittableRandom random = new SplittableRandom(11);
    private long tNanos;

    private void read(CurveProgress progress, double seconds, double value) {
        read(progress, seconds, value, Condition.OK);
    }

    private void read(CurveProgress progress, double seconds, double value, Condition condition) {
        for (long end = tNanos + (long) (seconds * 1e9); tNanos < end; ) {
            tNanos += TICK_NANOS;
            double noisy = value * (1 + 0.003 * random.nextGaussian());
            Reading reading =
                    condition == Condition.OK ? Reading.of(tNanos, noisy) : Reading.without(tNanos, condition);
            progress.take(new ReadingTaken(reading, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY));
        }
    }

    /** Whoever sets the generator; one that is set by the tool says that it stands. */
    private void set(CurveProgress progress) {
        double hz = progress.toSet().orElseThrow();
        progress.set(hz);
        progress.take(new Request.GeneratorStands(tNanos, hz, 1e-4));
    }

    @Nested
    class ByHand {

        private final CurveProgress progress = new CurveProgress(THREE, CurveTiming.byHand(6), List.of(), false);

        @Test
        void takesTheReadingWhenItHasMovedAndStandsAgain() {
            set(progress);
            read(progress, 8, 0.5);
            assertEquals(450e3, progress.takeNews().orElseThrow().hz());
            set(progress);
            read(progress, 2, 0.5);
            assertTrue(progress.takeNews().isEmpty(), "the generator was not moved yet");
            read(progress, 2.2, 1.0);
            assertEquals(1.0, progress.takeNews().orElseThrow().level(), 0.003);
        }

        @Test
        void takesAReadingThatDoesNotMoveAfterTheDwell() {
            set(progress);
            read(progress, 5.5, 0.5);
            assertTrue(progress.takeNews().isEmpty());
            read(progress, 1.5, 0.5);
            assertEquals(0.5, progress.takeNews().orElseThrow().level(), 0.002);
        }

        @Test
        void waitsWhileTheReadingStillMoves() {
            set(progress);
            read(progress, 6.5, 0.5);
            progress.takeNews();
            set(progress);
            for (int i = 0; i < 40; i++) {
                read(progress, 0.1, 0.5 + 0.01 * i);
            }
            assertTrue(progress.takeNews().isEmpty(), "it was still being turned");
        }

        @Test
        void measuresThePointBeforeAgain() {
            set(progress);
            read(progress, 7, 0.5);
            set(progress);
            progress.back();
            assertEquals(OptionalDouble.of(450e3), progress.toSet());
            set(progress);
            read(progress, 7, 0.7);
            assertEquals(1, progress.points().size());
            assertEquals(0.7, progress.points().get(0).level(), 0.003);
        }

        @Test
        void leavesAPointOut() {
            set(progress);
            progress.skip();
            assertEquals(OptionalDouble.of(455e3), progress.toSet());
            assertEquals(List.of(), progress.points());
        }
    }

    @Nested
    class WithACounter {

        private final CurveProgress progress = new CurveProgress(THREE, CurveTiming.byHand(6), List.of(), false);

        private void count(double hz) {
            progress.take(new Said.Counted(tNanos, hz, progress.wantedHz().orElseThrow(), true));
        }

        @Test
        void aPointCountsWhereTheCounterFindsIt() {
            set(progress);
            read(progress, 2, 0.5);
            count(450.7e3);
            read(progress, 1.2, 0.5);
            assertEquals(450.7e3, progress.takeNews().orElseThrow().hz());
            assertEquals(450.7e3, progress.points().get(0).hz());
        }

        @Test
        void whoeverCountsOnceIsWaitedForAtEachPoint() {
            set(progress);
            count(450.7e3);
            read(progress, 1.2, 0.5);
            progress.takeNews();
            set(progress);
            read(progress, 60, 1.0);
            assertTrue(progress.takeNews().isEmpty(), "it has moved and stands, but was not counted");
            count(454.1e3);
            read(progress, 1.2, 1.0);
            assertEquals(454.1e3, progress.takeNews().orElseThrow().hz());
        }

        @Test
        void nothingIsTakenWhileSomebodyTypes() {
            set(progress);
            progress.counting(true);
            read(progress, 30, 0.5);
            assertTrue(progress.takeNews().isEmpty());
            progress.counting(false);
            read(progress, 0.1, 0.5);
            assertEquals(450e3, progress.takeNews().orElseThrow().hz(), "nothing was typed");
        }

        @Test
        void ofTwoPointsAtOneFrequencyTheLastCounts() {
            set(progress);
            count(452e3);
            read(progress, 1.2, 0.5);
            set(progress);
            count(452e3);
            read(progress, 1.2, 0.8);
            assertEquals(1, progress.points().size());
            assertEquals(0.8, progress.points().get(0).level(), 0.01);
        }
    }

    @Test
    void takesNothingWithoutTheKeyWhereOnlyTheKeyCounts() {
        CurveProgress progress = new CurveProgress(THREE, CurveTiming.byHand(0), List.of(), false);
        set(progress);
        read(progress, 60, 0.5);
        assertTrue(progress.takeNews().isEmpty());
        progress.next();
        read(progress, 1.2, 0.5);
        assertTrue(progress.takeNews().isPresent());
    }

    @Test
    void takesLevelsAboveRest() {
        CurveProgress progress =
                new CurveProgress(List.of(455e3), CurveTiming.automatic(), List.of(CheckKind.REST), false);
        read(progress, 3, -0.9);
        assertTrue(progress.toSet().isEmpty(), "the resting reading comes first");
        progress.take(new Caution.Checked(tNanos, CheckKind.REST, CheckFigures.of(-0.2)));
        progress.take(new Request.CheckOver(tNanos));
        set(progress);
        read(progress, 3, -0.9);
        assertTrue(progress.isOver());
        assertEquals(0.7, progress.points().get(0).level(), 0.003);
    }

    /** A square detector: halving the signal quarters the reading; the curve then counts as if it were straight. */
    @Test
    void countsLevelsByTheLawThatWasMeasured() {
        CurveProgress progress = new CurveProgress(
                List.of(455e3), CurveTiming.automatic(), List.of(CheckKind.REST, CheckKind.DETECTOR_LAW), false);
        assertEquals(Optional.of(CheckKind.REST), progress.takeCheck());
        assertEquals(Optional.empty(), progress.takeCheck());
        progress.take(new Request.CheckOver(tNanos));
        assertEquals(Optional.of(CheckKind.DETECTOR_LAW), progress.takeCheck());
        for (int i = 0; i <= 5; i++) {
            progress.take(new CurveWork.LawStep(tNanos, -3 * i, Math.pow(10, -6 * i / 20.0)));
        }
        assertTrue(progress.toSet().isEmpty());
        progress.take(new Request.CheckOver(tNanos));
        set(progress);
        read(progress, 3, -0.25);
        assertEquals(0.5, progress.points().get(0).level(), 0.01);
    }

    @Test
    void keepsTheSignOfADiscriminator() {
        CurveProgress signed = new CurveProgress(List.of(455e3), CurveTiming.automatic(), List.of(), true);
        set(signed);
        read(signed, 3, -0.5);
        assertEquals(-0.5, signed.points().get(0).level(), 0.003);
        assertEquals(-0.5, signed.takeNews().orElseThrow().level(), 0.003);
        assertFalse(signed.droppedSigns());
    }

    @Test
    void tellsThatSignsWereDropped() {
        List<Double> four = List.of(450e3, 452e3, 454e3, 456e3);
        CurveProgress progress = new CurveProgress(four, CurveTiming.automatic(), List.of(), false);
        for (double level : new double[] {-0.5, -0.4, 0.4, 0.5}) {
            set(progress);
            read(progress, 3, level);
        }
        assertTrue(progress.isOver());
        assertTrue(progress.droppedSigns());
        assertEquals(0.5, progress.points().get(0).level(), 0.003);
    }

    @Test
    void leavesOutAFrequencyAtWhichNoReadingCanBeTrusted() {
        CurveProgress progress = new CurveProgress(THREE, CurveTiming.automatic(), List.of(), false);
        set(progress);
        read(progress, 25, 0, Condition.OVER_RANGE);
        assertTrue(Double.isNaN(progress.takeNews().orElseThrow().level()));
        assertFalse(progress.isOver());
        assertEquals(List.of(), progress.points());
    }

    @Test
    void slowMetersWithThreeReadingsASecondGiveAPointToo() {
        CurveProgress progress = new CurveProgress(List.of(455e3), CurveTiming.automatic(), List.of(), false);
        set(progress);
        for (int i = 1; i <= 6; i++) {
            progress.take(new ReadingTaken(
                    Reading.of(i * 333_000_000L, 1), Double.NaN, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY));
        }
        assertTrue(progress.isOver());
    }
}
