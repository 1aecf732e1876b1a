package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JumpTest {

    private static final long SECOND = 1_000_000_000;

    private final Jump jump = new Jump();

    /** One decibel is 0.109 of the level, one and a half are 0.159; what is sought downwards is negative here. */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 0, SAME",
        "1, 1.1, 0, SAME",
        "1, 0.9, 0, SAME",
        "1, 1.11, 0, OTHER",
        "1, 0.85, 0, OTHER",
        "1, 0.84, 0, LOWER",
        "1, 0.84, 0.1, LOWER",
        "1, 0.84, -0.1, OTHER",
        "1, 0.06, 0, LOWER",
        "1, 0.05, 0, GONE",
        "1, -0.05, -1, GONE",
        "1, 0, 0, GONE",
        "1, -0.5, 0, LOWER",
        "1, 10, 0, OTHER",
        "-1, -1.15, 0, OTHER",
        "-1, -1.17, 0, LOWER",
        "-1, -0.5, 0, OTHER",
        "0, 0, 0, SAME",
        "0, 0.1, 0, OTHER"
    })
    void whatBecomesOfTheLevelDependsOnWhatIsLeft(double before, double level, double slope, Jump.Settled settled) {
        jump.begin(0, before);
        assertEquals(settled, jump.settle(level, slope));
        assertFalse(jump.pending());
    }

    @Test
    void takesASecondToSettle() {
        assertFalse(jump.settles(0));
        jump.begin(5 * SECOND, 1);
        assertTrue(jump.pending());
        assertFalse(jump.settles(6 * SECOND - 1));
        assertTrue(jump.settles(6 * SECOND));
    }

    @Test
    void ofSeveralTheLevelBeforeTheFirstCountsAndTheTimeOfTheLast() {
        jump.begin(0, 1);
        jump.begin(SECOND / 2, 0.2);
        assertEquals(1, jump.before());
        assertFalse(jump.settles(SECOND));
        assertTrue(jump.settles(3 * SECOND / 2));
        jump.settle(1, 0);
        jump.begin(2 * SECOND, 0.7);
        assertEquals(0.7, jump.before());
    }

    @Test
    void aClearedOneSettlesNothing() {
        jump.begin(0, 1);
        jump.clear();
        assertFalse(jump.pending());
        assertFalse(jump.settles(5 * SECOND));
    }
}
