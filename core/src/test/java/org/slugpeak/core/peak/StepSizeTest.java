package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.grammar.Law;

class StepSizeTest {

    @Provide
    Arbitrary<Double> digits() {
        return Arbitraries.of(0.001, 1.0, 0.1, 0.002, 0.005, 1e-6, 1000.0, 1 / 4096.0);
    }

    /** Neighbours by one and by two digits are among them, so nothing coarser divides them all. */
    @Law
    void findsTheDigitAmongItsMultiples(
            @ForAll("digits") double digit, @ForAll @Size(20) List<@IntRange(min = 400, max = 600) Integer> counts) {
        StepSize step = new StepSize();
        double before = 500 * digit;
        for (int count : counts) {
            step.add(count * digit - before, count * digit);
            before = count * digit;
        }
        step.add(digit, 500 * digit);
        assertEquals(digit, step.step(), 1e-4 * digit);
    }

    @Test
    void runsToZeroOnContinuousReadings() {
        StepSize step = new StepSize();
        Gauss gauss = new Gauss(1);
        for (int i = 0; i < 200; i++) {
            step.add(gauss.next(), 1);
        }
        assertEquals(0, step.step());
    }

    @Test
    void equalReadingsSayNothing() {
        StepSize step = new StepSize();
        step.add(0.02, 1);
        step.add(0, 1);
        step.add(0.03, 1);
        step.add(1e-9, 1);
        assertEquals(0.01, step.step(), 1e-9);
    }

    @Test
    void theDigitOfAnotherRangeTakesOver() {
        StepSize step = new StepSize();
        for (int i = 0; i < 64; i++) {
            step.add(i % 2 == 0 ? 0.001 : -0.002, 1);
        }
        assertEquals(0.001, step.step(), 1e-9);
        for (int i = 0; i < 7; i++) {
            step.add(0.01, 1);
        }
        assertEquals(0.001, step.step(), 1e-9);
        step.add(-0.01, 1);
        assertEquals(0.01, step.step(), 1e-9);
    }

    @Test
    void aFinerDigitTakesOverAtTheEndOfTheWindow() {
        StepSize step = new StepSize();
        for (int i = 0; i < 64; i++) {
            step.add(0.01, 1);
        }
        for (int i = 0; i < 64; i++) {
            step.add(0.001, 1);
        }
        assertEquals(0.001, step.step(), 1e-9);
    }
}
