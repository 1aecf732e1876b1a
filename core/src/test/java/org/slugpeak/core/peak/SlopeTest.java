package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SlopeTest {

    private final Blocks blocks = new Blocks();
    private final Slope slope = new Slope(blocks.front);

    @ParameterizedTest
    @ValueSource(doubles = {0.5, -0.5, 0.02})
    void isTheSpeedOfAnEvenMovement(double perSecond) {
        blocks.add(300, i -> 5 + perSecond * Blocks.SECONDS * i);
        slope.moved();
        assertEquals(perSecond, slope.perSecond(), 1e-9);
        assertEquals(perSecond < 0, slope.fallsNow());
        assertTrue(slope.movesWithin(1));
    }

    @Test
    void aSlowMovementInNoiseShowsInLongerMeansOnly() {
        Gauss gauss = new Gauss(1);
        blocks.add(300, i -> 1 + 0.05 * Blocks.SECONDS * i + 0.003 * gauss.next());
        slope.moved();
        assertEquals(0.05, slope.perSecond(), 0.02);
        assertFalse(slope.movesWithin(0.1));
        assertTrue(slope.movesWithin(4));
    }

    @Test
    void restIsNoMovement() {
        Gauss gauss = new Gauss(2);
        blocks.add(400, i -> 1 + 0.003 * gauss.next());
        slope.moved();
        assertEquals(0, slope.perSecond());
        assertFalse(slope.movesWithin(10));
        assertFalse(slope.fallsNow());
    }

    @Test
    void oneDigitIsNoMovement() {
        blocks.add(300, i -> 0.5 + 0.001 * (i % 3));
        blocks.add(300, i -> 0.5);
        blocks.add(1, i -> 0.501);
        slope.moved();
        assertEquals(0, slope.perSecond());
    }

    /** Up to the digit, and long still. */
    @Test
    void oneDigitIsNoMovementOfASteadyMeterEither() {
        blocks.add(101, i -> (400 + i) / 1000.0);
        blocks.add(2000, i -> 0.5);
        blocks.add(1, i -> 0.501);
        slope.moved();
        assertEquals(0, slope.perSecond());
        blocks.add(1, i -> 0.503);
        slope.moved();
        assertTrue(slope.perSecond() > 0);
    }

    /** Means of 2.56 s would show it, and would still show it long after it has ended. */
    @Test
    void whatOnlyMeansOfMoreThanASecondAndAHalfShowIsNoMovement() {
        Gauss gauss = new Gauss(3);
        blocks.add(1000, i -> 1 + 0.3 * 0.003 * Blocks.SECONDS * i + 0.003 * gauss.next());
        slope.moved();
        assertEquals(0, slope.perSecond());
    }

    /** A parabola that reaches its top of 1 V one second after the last block. */
    @Test
    void foreseesTheTopOfAParabola() {
        blocks.add(100, i -> 1 - 0.1 * Math.pow((149 - i) * Blocks.SECONDS, 2));
        slope.moved();
        assertEquals(1, slope.secondsToTop(1), 1.5 * Blocks.SECONDS);
    }

    @Test
    void noTopIsForeseenWhereTheLevelFalls() {
        blocks.add(100, i -> 1 - 0.001 * i);
        slope.moved();
        assertEquals(Double.POSITIVE_INFINITY, slope.secondsToTop(1));
    }

    @Test
    void aClearedOneShowsNothing() {
        blocks.add(100, i -> 1 - 0.001 * i);
        slope.moved();
        slope.clear();
        assertEquals(0, slope.perSecond());
    }
}
