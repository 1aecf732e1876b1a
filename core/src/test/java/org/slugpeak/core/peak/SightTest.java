package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels are in parts of {@link Watched#VOLTS}; a block takes 20 ms. */
class SightTest {

    private final Watched level = new Watched();
    private final Sight sight = level.sight;
    private final Gauss gauss = new Gauss(1);

    @Test
    void nothingIsSeenBeforeFourBlocks() {
        level.rest(0.06, 1);
        assertFalse(sight.isReady());
        level.rest(0.02, 1);
        assertTrue(sight.isReady());
    }

    /** The longest mean of a power of two blocks that fits; its sigma is that of a block over the root of their number. */
    @ParameterizedTest
    @CsvSource({"0.01, 1", "0.05, 2", "0.35, 16", "0.7, 32", "9, 256"})
    void aMeanOverATimeIsAsSureAsItsBlocksAreMany(double seconds, int blocks) {
        level.follow(20, t -> 1 + 0.01 * gauss.next());
        double white = 0.01 * Watched.VOLTS / Math.sqrt(blocks);
        assertEquals(white, sight.sigmaOver(seconds, Watched.VOLTS), 0.25 * white);
        assertEquals(Watched.VOLTS, sight.meanOver(seconds), 4 * white);
        assertEquals(0.02, sight.blockSeconds(), 1e-12);
    }

    @Test
    void aGapLeavesTheHeightAndForgetsTheMovement() {
        level.follow(2, t -> 1 + 0.1 * t);
        assertTrue(sight.slope.perSecond() > 0);
        sight.gap();
        assertEquals(0, sight.slope.perSecond());
        assertEquals(1.2 * Watched.VOLTS, sight.level.value(), 0.003);
    }

    @Test
    void theNextAdjusterHasNeither() {
        level.follow(2, t -> 1 + 0.1 * t);
        sight.restart();
        assertEquals(0, sight.slope.perSecond());
        assertTrue(Double.isNaN(sight.level.value()));
    }

    private void beat(int swings) {
        level.rest(1, 1);
        level.follow(swings, t -> 1 + 0.02 * (1 - Math.cos(Math.PI * t)));
        level.follow(0.5, t -> 1 + (swings % 2 == 0 ? 0.02 : -0.02) * t);
    }

    @Test
    void swingsBeforeAGapDoNotJoinThoseAfterIt() {
        beat(1);
        sight.gap();
        level.follow(1.5, t -> 1 + 0.02 * (1 - Math.cos(Math.PI * t)));
        assertEquals(0, sight.sway.within(0.02));
    }

    @Test
    void aSwayOfThreeSwingsGoesWithTheAdjuster() {
        beat(3);
        assertTrue(sight.sway.within(0.02) > 0);
        sight.restart();
        assertEquals(0, sight.sway.within(0.02));
    }
}
