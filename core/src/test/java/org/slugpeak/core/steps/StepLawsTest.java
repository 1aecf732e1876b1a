package org.slugpeak.core.steps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.peak.Seek;

/** What holds for all values; every draw has a fixed seed. */
final class StepLawsTest {

    private static final int DRAWS = 2_000;

    /** Covered at least so often by an interval that claims to hold it. */
    private static final double COVERED = 0.95;

    private final SplittableRandom random = new SplittableRandom(20261130);

    @Test
    void ofAnExactParabolaTheVertexIsFoundExactly() {
        for (int i = 0; i < DRAWS; i++) {
            double top = random.nextDouble(1, 9);
            double curvature = random.nextDouble(0.001, 0.02);
            double at = i % 10 == 0 ? 6.5 : random.nextDouble(6, 7);
            StepsBack back = pass(Seek.PEAK, step -> top - curvature * (step - at) * (step - at));
            double last = at < 6.5 ? 7 : 8;
            assertEquals(last - at, back.steps(), 1e-8, "vertex at " + at);
            assertEquals(top, back.top(), 1e-9);
        }
    }

    @Test
    void valuesInAnotherUnitGiveTheSameStepsAndATopInThatUnit() {
        for (int i = 0; i < DRAWS; i++) {
            double[] values = unimodal(1);
            double[] tenths = DoubleStream.of(values).map(value -> value / 10).toArray();
            for (Seek seek : List.of(Seek.PEAK, Seek.DIP)) {
                double[] whole = seek == Seek.PEAK ? values : upsideDown(values);
                double[] parts = seek == Seek.PEAK
                        ? tenths
                        : DoubleStream.of(whole).map(value -> value / 10).toArray();
                StepsBack one = Told.of(seek, whole).back();
                StepsBack other = Told.of(seek, parts).back();
                assertEquals(one.steps(), other.steps(), 1e-9);
                assertEquals(one.stepsError(), other.stepsError(), 1e-9);
                assertEquals(one.top(), 10 * other.top(), 1e-9);
                assertEquals(one.topError(), 10 * other.topError(), 1e-6);
            }
        }
    }

    @Test
    void aDipIsAPeakUpsideDown() {
        for (int i = 0; i < DRAWS; i++) {
            double[] values = unimodal(1);
            Told peak = Told.of(Seek.PEAK, values);
            Told dip = Told.of(Seek.DIP, upsideDown(values));
            assertEquals(peak.passes.size(), dip.passes.size());
            assertEquals(peak.back().steps(), dip.back().steps(), 1e-9);
            assertEquals(2000 - peak.back().top(), dip.back().top(), 1e-9);
        }
    }

    @Test
    void stepsInReverseOrderGiveTheMirroredTop() {
        for (int i = 0; i < DRAWS; i++) {
            double top = 100 + random.nextInt(900);
            double before = top - 1 - random.nextInt(90);
            double after = top - 1 - random.nextInt(90);
            int tops = 1 + random.nextInt(4);
            for (List<Curve> curves : List.of(Curve.ofPeak(1), Curve.ofDip(top, 1))) {
                boolean dip = curves.size() > 2;
                Crest there = dip ? new Crest(top, before, tops, top) : new Crest(before, top, tops, after);
                Vertex one = Vertex.of(there, curves, 1);
                Vertex other = Vertex.of(new Crest(there.after(), there.top(), tops, there.before()), curves, 1);
                assertEquals(one.offset(), -other.offset(), 1e-12);
                assertEquals(one.offsetError(), other.offsetError(), 1e-12);
                assertEquals(one.height(), other.height(), 1e-9);
                assertEquals(one.heightError(), other.heightError(), 1e-9);
            }
        }
    }

    /** V = A / sqrt(1 + x^2): one tuned circuit, steps of 2 to 150 % of half its bandwidth, two to four digits behind the point. */
    @ParameterizedTest
    @CsvSource({"0.02,0.1", "0.1,0.3", "0.3,0.7", "0.7,1.5"})
    void theErrorsCoverTheTruthOnRoundedResonanceCurves(double finest, double coarsest) {
        Coverage coverage = new Coverage(Seek.PEAK, finest, coarsest);
        for (int i = 0; i < DRAWS; i++) {
            coverage.draw(x -> 1 / Math.sqrt(1 + x * x));
        }
        coverage.holds();
    }

    /** V = A sqrt((d^2 + x^2) / (1 + x^2)): a wave trap that leaves d of the signal. */
    @ParameterizedTest
    @CsvSource({"0.02,0.1", "0.1,0.3", "0.3,0.7", "0.7,1.5"})
    void theErrorsCoverTheTruthOnRoundedTraps(double finest, double coarsest) {
        Coverage coverage = new Coverage(Seek.DIP, finest, coarsest);
        for (int i = 0; i < DRAWS; i++) {
            double left = random.nextDouble(0.02, 0.3);
            coverage.draw(x -> Math.sqrt((left * left + x * x) / (1 + x * x)));
        }
        coverage.holds();
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void mistakesThatAreTakenBackChangeNothingThatFollows(Seek seek) {
        for (int i = 0; i < DRAWS / 4; i++) {
            Told straight = new Told(seek);
            Told mistaken = new Told(seek);
            for (int step = 0; step < 12; step++) {
                double value = random.nextInt(-5, 20);
                mistaken.finder.accept(99, random.nextInt(-5, 20));
                mistaken.finder.undo();
                mistaken.words.removeIf(word -> word.startsWith("99 "));
                straight.type(value);
                mistaken.type(value);
            }
            assertEquals(straight.words, mistaken.words);
            assertEquals(straight.finder.best(), mistaken.finder.best());
        }
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void anyFiniteValuesGiveABestAndStepsThatAreNotNegative(Seek seek) {
        double[] awkward = {
            0, -0.0, 1, -1, 1e-300, Double.MIN_VALUE, 1e300, Double.MAX_VALUE, 0.1, 0.30000000000000004, 7, 7, 7.5
        };
        for (int i = 0; i < DRAWS; i++) {
            Told told = new Told(seek);
            for (int step = 0; step < 10; step++) {
                told.type(awkward[random.nextInt(awkward.length)]);
                assertTrue(seek == Seek.ZERO || !Double.isNaN(told.finder.best()));
            }
            for (StepsBack back : told.passes) {
                assertTrue(back.steps() >= 0 && back.stepsError() >= 0, told.words + " " + back);
            }
        }
    }

    /** Whole numbers that rise, stand and fall; the first does not end in 0, so that the last digit shows. */
    private double[] unimodal(int least) {
        List<Double> values = new ArrayList<>();
        double value = 100 + 10 * random.nextInt(10) + 1 + random.nextInt(9);
        int rises = 1 + random.nextInt(5);
        for (int i = 0; i < rises; i++) {
            values.add(value);
            value += least + random.nextInt(60);
        }
        int tops = 1 + random.nextInt(3);
        for (int i = 0; i < tops; i++) {
            values.add(value);
        }
        values.add(value - least - random.nextInt(60));
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[] upsideDown(double[] values) {
        return DoubleStream.of(values).map(value -> 2000 - value).toArray();
    }

    /** Steps 0, 1, 2 ... of a curve until a pass is told. */
    private static StepsBack pass(Seek seek, DoubleUnaryOperator curve) {
        Told told = new Told(seek);
        for (int step = 0; told.passes.isEmpty(); step++) {
            told.type(curve.applyAsDouble(step));
        }
        return told.back();
    }

    /** Counts how often the truth lies within the error that was told. */
    private final class Coverage {

        private final Seek seek;
        private final double finest;
        private final double coarsest;
        private int offsets;
        private int heights;
        private int drawn;

        Coverage(Seek seek, double finest, double coarsest) {
            this.seek = seek;
            this.finest = finest;
            this.coarsest = coarsest;
        }

        void draw(DoubleUnaryOperator curve) {
            double amplitude = random.nextDouble(0.2, 5);
            double perUnit = Math.pow(10, 1 + random.nextInt(3));
            double width = random.nextDouble(finest, coarsest);
            double at = Math.ceil(3 / width) + random.nextDouble(-0.5, 0.5);
            Told told = new Told(seek);
            int steps = 0;
            while (told.passes.isEmpty() && steps < 3 * at) {
                double exact = amplitude * curve.applyAsDouble(width * (steps - at));
                told.type(Math.rint(exact * perUnit) / perUnit);
                steps++;
            }
            drawn++;
            if (told.passes.isEmpty()) {
                return;
            }
            StepsBack back = told.back();
            double truth = steps - 1 - at;
            offsets += Math.abs(back.steps() - truth) <= back.stepsError() + 1e-9 ? 1 : 0;
            double off = Math.abs(back.top() - amplitude * curve.applyAsDouble(0));
            heights += Double.isNaN(back.topError()) || off <= back.topError() + 1e-9 ? 1 : 0;
        }

        void holds() {
            assertEquals(DRAWS, drawn);
            assertTrue(offsets >= COVERED * drawn, "place: " + offsets + " of " + drawn);
            assertTrue(heights >= COVERED * drawn, "height: " + heights + " of " + drawn);
        }
    }
}
