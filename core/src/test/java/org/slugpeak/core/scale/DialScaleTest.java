package org.slugpeak.core.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.word.Refused;

class DialScaleTest {

    /** Worked outside this project: marks 400/450/500 kHz give 397.2/452.6/503.1 on the counter. */
    private static DialScale example(double sigmaCounterHz, double sigmaDialHz) throws Refused {
        return DialScale.through(
                List.of(
                        new KnownPoint(500e3, 503.1e3, sigmaCounterHz),
                        new KnownPoint(400e3, 397.2e3, sigmaCounterHz),
                        new KnownPoint(450e3, 452.6e3, sigmaCounterHz)),
                sigmaDialHz);
    }

    @Test
    void tellsWhatADialSettingGives() throws Refused {
        ScaleEstimate at455 = example(100, 500).trueAt(455e3).orElseThrow();
        assertEquals(457.65e3, at455.hz(), 1e-6);
        assertEquals(457.8705e3 - 457.65e3, at455.bowHz(), 0.01, "the parabola gives 457.8705 kHz");
    }

    /** Law of propagation, GUM 5.1.2: sqrt((0.9 x 0.1)^2 + (0.1 x 0.1)^2 + (1.01 x 0.5)^2) = 0.51305 kHz. */
    @Test
    void propagatesTheUncertainties() throws Refused {
        ScaleEstimate at455 = example(100, 500).trueAt(455e3).orElseThrow();
        assertEquals(513.05, at455.sigmaHz(), 0.01);
        assertEquals(Math.hypot(513.05, 220.5), at455.combinedHz(), 0.1);
    }

    @Test
    void tellsWhatToSetForATrue455() throws Refused {
        ScaleEstimate dial = example(100, 500).dialFor(455e3).orElseThrow();
        assertEquals(452.37624e3, dial.hz(), 0.01);
        assertEquals(452.37624e3 - 452.27106e3, dial.bowHz(), 5, "the parabola's root is 452.27106 kHz");
    }

    @Test
    void refusesToAnswerOutsideTheKnownPoints() throws Refused {
        DialScale scale = example(0, 0);
        assertTrue(scale.trueAt(399.9e3).isEmpty());
        assertTrue(scale.trueAt(500.1e3).isEmpty());
        assertTrue(scale.dialFor(397.1e3).isEmpty());
        assertTrue(scale.dialFor(503.2e3).isEmpty());
        assertTrue(scale.trueAt(400e3).isPresent() && scale.trueAt(500e3).isPresent());
    }

    @Test
    void twoPointsSayNothingOfTheBow() throws Refused {
        DialScale scale =
                DialScale.through(List.of(new KnownPoint(400e3, 401e3, 10), new KnownPoint(500e3, 502e3, 10)), 100);
        assertTrue(Double.isNaN(scale.trueAt(450e3).orElseThrow().bowHz()));
    }

    @Test
    void refusesPointsThatMakeNoScale() {
        KnownPoint low = new KnownPoint(400e3, 401e3, 0);
        assertThrows(Refused.class, () -> DialScale.through(List.of(low), 0));
        assertThrows(Refused.class, () -> DialScale.through(List.of(low, new KnownPoint(400e3, 402e3, 0)), 0));
        Refused falling =
                assertThrows(Refused.class, () -> DialScale.through(List.of(low, new KnownPoint(500e3, 250e3, 0)), 0));
        assertTrue(falling.getMessage().contains("harmonic"), falling.getMessage());
    }

    @Test
    void risesEverywhereAndInvertsItself() throws Refused {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 200; round++) {
            DialScale scale = DialScale.through(randomRisingPoints(random), 50);
            double previous = 0;
            KnownPoint first = scale.points().get(0);
            KnownPoint last = scale.points().get(scale.points().size() - 1);
            for (int step = 1; step < 100; step++) {
                double dial = first.dialHz() + (last.dialHz() - first.dialHz()) * step / 100;
                double truth = scale.trueAt(dial).orElseThrow().hz();
                assertTrue(truth > previous);
                assertEquals(dial, scale.dialFor(truth).orElseThrow().hz(), 1e-3);
                previous = truth;
            }
        }
    }

    /** A smooth dial law lies within the bow of the straight piece, as the parabola through its neighbours estimates it. */
    @Test
    void smoothDialStaysWithinTheUncertaintyTold() throws Refused {
        List<KnownPoint> points = new ArrayList<>();
        for (double dial = 400e3; dial <= 500e3; dial += 20e3) {
            points.add(new KnownPoint(dial, bentLaw(dial), 0));
        }
        DialScale scale = DialScale.through(points, 0);
        for (double dial = 400e3; dial <= 500e3; dial += 1e3) {
            ScaleEstimate told = scale.trueAt(dial).orElseThrow();
            assertTrue(Math.abs(told.hz() - bentLaw(dial)) <= 1.2 * told.bowHz() + 1e-6, told::toString);
        }
    }

    private static double bentLaw(double dialHz) {
        double x = (dialHz - 450e3) / 50e3;
        return dialHz + 2e3 + 3e3 * x * x + 400 * x * x * x;
    }

    private static List<KnownPoint> randomRisingPoints(SplittableRandom random) {
        List<KnownPoint> points = new ArrayList<>();
        double dial = 100e3;
        double truth = 95e3;
        for (int i = 0; i < random.nextInt(2, 12); i++) {
            dial += random.nextDouble(5e3, 60e3);
            truth += random.nextDouble(5e3, 60e3);
            points.add(new KnownPoint(dial, truth, random.nextDouble(100)));
        }
        return points;
    }
}
