package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ApproachTest {

    private static final double NEVER = Double.NaN;

    private final Approach approach = new Approach();

    private void at(double seconds, double level) {
        approach.add(Math.round(1e9 * seconds), level);
    }

    /** By a straight line between two readings, and not beyond them. */
    @ParameterizedTest
    @CsvSource({"0.99, NaN", "1, 10", "1.5, 11", "2, 12", "2.5, 14", "3, 16", "3.01, NaN"})
    void theTimeOfALevelIsWhenItWasReached(double level, double seconds) {
        at(10, 1);
        at(12, 2);
        at(16, 3);
        assertEquals(seconds, approach.secondsAt(level), 1e-9);
    }

    @Test
    void oneReadingIsNoApproach() {
        assertEquals(NEVER, approach.secondsAt(1));
        at(1, 1);
        assertEquals(NEVER, approach.secondsAt(1));
    }

    @Test
    void timeSpentBelowALevelReachedEarlierCountsToTheStepItWasSpentIn() {
        at(1, 1);
        at(2, 2);
        at(3, 1.95);
        at(4, 2.5);
        assertEquals(3, approach.secondsAt(2.25), 1e-9);
    }

    /** Readings finer than 0.05 dB, that is 0.6 percent, are passed over. */
    @Test
    void aFinerTraceIsOfNoUse() {
        at(1, 1);
        at(2, 1.004);
        at(3, 1.01);
        assertEquals(2, approach.secondsAt(1.005), 1e-9);
    }

    /** Seven tenths of a decibel are 7.7 percent. */
    @ParameterizedTest
    @CsvSource({"1.86, 1.5", "1.83, NaN"})
    void aFallBeginsAnotherApproach(double fallenTo, double secondsAtOneAndAHalf) {
        at(1, 1);
        at(2, 2);
        at(3, fallenTo);
        at(4, 2.2);
        assertEquals(secondsAtOneAndAHalf, approach.secondsAt(1.5), 1e-9);
    }

    /** Half a second of every level between a trace of 300 readings, a sixteenth of a decibel apart. */
    @Test
    void atLeastTheLastSixDecibelsAreKnown() {
        double step = Math.pow(10, 0.0625 / 20);
        for (int i = 0; i < 300; i++) {
            at(0.5 * i, Math.pow(step, i));
        }
        assertEquals(149.5, approach.secondsAt(Math.pow(step, 299)), 1e-6);
        assertEquals(101.5, approach.secondsAt(Math.pow(step, 203) * (1 + 1e-12)), 1e-6);
        assertEquals(86.5, approach.secondsAt(Math.pow(step, 173) * (1 + 1e-12)), 1e-6);
        assertEquals(NEVER, approach.secondsAt(Math.pow(step, 170)));
    }

    @Test
    void aClearedOneKnowsNothing() {
        at(1, 1);
        at(2, 2);
        approach.clear();
        assertEquals(NEVER, approach.secondsAt(1.5));
        at(3, 1.2);
        at(4, 1.4);
        assertEquals(3.5, approach.secondsAt(1.3), 1e-9);
    }
}
