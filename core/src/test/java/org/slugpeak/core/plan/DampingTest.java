package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** IEC 60063, series E12: what is wanted to the ohm is taken as it is, not the value below. */
    @ParameterizedTest
    @CsvSource({"10e3", "12e3", "15e3", "22e3", "47e3", "82e3", "100e3", "4.7e3"})
    void aStandardValueIsItsOwnSuggestion(double ohms) {
        double q = 80;
        double parallel = q * REACTANCE;
        double wanted = parallel * ohms / (parallel + ohms);
        double kappa = 0.6 / Math.sqrt(wanted / parallel);
        assertEquals(ohms, Damping.suggested("T1", q, kappa, REACTANCE).ohms(), 1e-6);
    }

    @Test
    void isRefusedWhereItIsNotNeeded() {
        assertThrows(IllegalArgumentException.class, () -> Damping.suggested("T1", 80, 0.6, REACTANCE));
        assertThrows(IllegalArgumentException.class, () -> Damping.suggested("T1", 80, 0.5, REACTANCE));
        assertThrows(IllegalArgumentException.class, () -> new Damping("T1", 0));
    }
}
