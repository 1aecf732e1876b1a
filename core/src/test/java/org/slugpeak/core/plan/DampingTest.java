package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Rider, Resonance and Alignment, 1936, treats over-coupled transformers with an output meter; figures computed. */
class DampingTest {

    private static final double REACTANCE = 1 / (2 * Math.PI * 455e3 * 110e-12);

    @Test
    void of22KilohmLeaves056OfTheCriticalCoupling() {
        assertEquals(0.564, new Damping("T1", 22e3).remainingKappa(80, 2, REACTANCE), 0.001);
    }

    @Test
    void suggestionIsAStandardValueThatMakesPeakingSafe() {
        SplittableRandom random = new SplittableRandom(22);
        for (int round = 0; round < 500; round++) {
            double q = random.nextDouble(40, 200);
            double kappa = random.nextDouble(1.01, 4);
            Damping damping = Damping.suggested("T1", q, kappa, REACTANCE);
            double left = damping.remainingKappa(q, kappa, REACTANCE);
            assertTrue(left <= 0.6 + 1e-9 && left > 0.5, () -> damping + " leaves " + left);
        }
    }

    @Test
    void isRefusedWhereItIsNotNeeded() {
        assertThrows(IllegalArgumentException.class, () -> Damping.suggested("T1", 80, 0.5, REACTANCE));
        assertThrows(IllegalArgumentException.class, () -> new Damping("T1", 0));
    }
}
