package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.grammar.Law;

class SpreadTest {

    private static Spread after(double memory, int count, double sigma, long seed) {
        Gauss gauss = new Gauss(seed);
        Spread scale = new Spread(memory);
        for (int i = 0; i < count; i++) {
            scale.add(sigma * gauss.next(), 0);
        }
        return scale;
    }

    /** A mean of 512 absolute values, cut at two sigma, spreads by 0.7 / sqrt(512) = 3 percent; this is four of that. */
    @Law
    void isSigmaOfNormalDeviates(
            @ForAll @DoubleRange(min = 0.01, max = 100) double sigma, @ForAll @IntRange(min = 1, max = 1000) int seed) {
        assertEquals(sigma, after(512, 2000, sigma, seed).sigma(), 0.13 * sigma);
    }

    @Test
    void remembersNoMoreThanItsMemory() {
        Spread scale = after(32, 1000, 1, 1);
        assertEquals(32, scale.seen());
        Gauss gauss = new Gauss(2);
        for (int i = 0; i < 200; i++) {
            scale.add(0.5 * gauss.next(), 0);
        }
        assertEquals(0.5, scale.sigma(), 0.15);
    }

    @Test
    void aSingleWildDeviationCountsAsTwoSigma() {
        Spread scale = after(100, 1000, 1, 3);
        double before = scale.sigma();
        scale.add(1e9, 0);
        double cut = before + (2 * before / 0.7809 - before) / 100;
        assertEquals(cut, scale.sigma(), 1e-12);
    }

    @Test
    void aNewRegimeIsLearntAfterEightUnexpectedDeviations() {
        Spread scale = after(1000, 5000, 1, 4);
        for (int i = 0; i < 7; i++) {
            scale.add(100, 0);
        }
        assertEquals(1, scale.sigma(), 0.2);
        scale.add(100, 0);
        assertEquals(1, scale.seen());
        assertEquals(100 / 0.7809, scale.sigma(), 1e-9);
    }

    @Test
    void anExpectedDeviationEndsARowOfUnexpectedOnes() {
        Spread scale = after(1000, 5000, 1, 5);
        for (int i = 0; i < 50; i++) {
            scale.add(i % 8 == 7 ? 0.1 : 100, 0);
        }
        assertEquals(1000, scale.seen());
    }

    @Test
    void aDeviationUpToTheFloorIsNeverCut() {
        Spread scale = new Spread(10);
        for (int i = 0; i < 10; i++) {
            scale.add(0, 0.001);
        }
        assertEquals(0, scale.sigma());
        scale.add(0.001, 0.001);
        assertEquals(0.001 / 0.7809 / 10, scale.sigma(), 1e-12);
    }

    @Test
    void theFirstThreeDeviationsAreTakenWhole() {
        Spread scale = new Spread(10);
        scale.add(1, 0);
        scale.add(5, 0);
        scale.add(-9, 0);
        assertEquals(5 / 0.7809, scale.sigma(), 1e-12);
    }

    @Test
    void rescalesAndForgets() {
        Spread scale = after(100, 200, 1, 6);
        double before = scale.sigma();
        scale.rescale(0.5);
        assertEquals(before / 2, scale.sigma());
        scale.unsettle();
        assertEquals(0, scale.seen());
        scale.add(7, 0);
        assertEquals(7 / 0.7809, scale.sigma(), 1e-12);
    }
}
