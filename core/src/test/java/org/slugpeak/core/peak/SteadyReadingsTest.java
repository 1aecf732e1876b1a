package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SteadyReadingsTest {

    /** Analyst 114 (1989) 1693: copper in flour, microgram per gram; 28.95 is wild. Median 3.385, 1.4826 MAD 0.526. */
    private static final double[] COPPER = {
        2.20, 2.20, 2.40, 2.40, 2.50, 2.70, 2.80, 2.90, 3.03, 3.03, 3.10, 3.37, 3.40, 3.40, 3.40, 3.50, 3.60, 3.70,
        3.70, 3.70, 3.70, 3.77, 5.28, 28.95
    };

    @Test
    void aScaleIsSigmaForNormalNoise() {
        SplittableRandom random = new SplittableRandom(3);
        Spread scale = new Spread(1e9);
        for (int i = 0; i < 1_000_000; i++) {
            double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
            scale.add(0.25 * radius * Math.cos(2 * Math.PI * random.nextDouble()), 0);
        }
        assertEquals(0.25, scale.sigma(), 0.002);
    }

    @Test
    void aWildValueHardlyMovesAScale() {
        Spread scale = new Spread(1e9);
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 2400; i++) {
            scale.add(COPPER[random.nextInt(COPPER.length)] - 3.385, 0);
        }
        assertEquals(0.526, scale.sigma(), 0.2);
    }

    @Test
    void theLastDigitOfAMeterIsFound() {
        StepSize step = new StepSize();
        SplittableRandom random = new SplittableRandom(5);
        double before = 0.512;
        for (int i = 0; i < 200; i++) {
            double next = Math.rint(1000 * random.nextDouble(0.4, 0.6)) / 1000;
            step.add(next - before, next);
            before = next;
        }
        assertEquals(0.001, step.step(), 1e-9);
    }

    @Test
    void continuousReadingsHaveNoLastDigit() {
        StepSize step = new StepSize();
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 200; i++) {
            step.add(random.nextDouble(-0.1, 0.1), 1);
        }
        assertEquals(0, step.step());
    }

    @Test
    void anHourOfSteadyNoiseTellsNothing() {
        for (double noise : new double[] {0.0005, 0.0035, 0.02, 0.05}) {
            Told told = new Told();
            new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, noise).rest(3600, 1);
            assertEquals(1, told.all.size(), "noise " + noise + ": " + told.all);
            assertTrue(told.words().contains("flat"));
        }
    }
}
