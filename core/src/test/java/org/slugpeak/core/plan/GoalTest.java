package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GoalTest {

    /** Common practice, no source: a trap is better the less comes through, everything else that is read in decibels the more. */
    @ParameterizedTest
    @CsvSource({"PEAK, 3, 3", "PEAK, -3, -3", "ON_DIAL, 3, 3", "DIP, 3, -3", "DIP, -14, 14"})
    void countsAsGainedWhatIsBetterForIt(Goal goal, double riseDb, double gainDb) {
        assertEquals(gainDb, goal.gainDb(riseDb));
    }

    @ParameterizedTest
    @EnumSource(Goal.class)
    void gainsNothingKnownFromARiseThatIsNotKnown(Goal goal) {
        assertTrue(Double.isNaN(goal.gainDb(Double.NaN)));
    }

    /** A ratio of two readings says something only where zero is no reading like others. */
    @ParameterizedTest
    @EnumSource(Goal.class)
    void hasDecibelsWhereverTheSignOfAReadingDoesNotCount(Goal goal) {
        assertEquals(goal.seek().signCounts(), !goal.hasDecibels());
    }

    /** From 3 mV to 0.5 mV beside a zero is no gain of 16 dB. */
    @Test
    void aZeroHasNoDecibelsAndNoGain() {
        assertFalse(Goal.ZERO.hasDecibels());
        assertTrue(Double.isNaN(Goal.ZERO.gainDb(-16)));
    }

    /** Common practice, no source: traps, discriminators and oscillators are judged by other signs than coupled circuits. */
    @Test
    void aMaximumAloneTellsOfCoupling() {
        assertEquals(
                Goal.PEAK,
                Arrays.stream(Goal.values())
                        .filter(Goal::isOfCoupledPair)
                        .reduce((a, b) -> {
                            throw new AssertionError(a + " and " + b);
                        })
                        .orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"PEAK, peak", "DIP, dip", "ZERO, zero", "ON_DIAL, on-dial"})
    void hasTheWordThatPlansUse(Goal goal, String code) {
        assertEquals(code, goal.code());
    }
}
