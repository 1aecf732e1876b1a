package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SmootherTest {

    private final Blocks blocks = new Blocks();
    private final Smoother smoother = new Smoother();

    private void look() {
        smoother.look(blocks.front.pyramid, blocks.front.noise, Blocks.SECONDS);
    }

    /** The longest mean of no more than 3 s is 128 blocks long. */
    @Test
    void whiteNoiseAtRestIsAveragedOverTheLongestMean() {
        Gauss gauss = new Gauss(1);
        blocks.add(1000, i -> 1 + 0.01 * gauss.next(), this::look);
        assertEquals(blocks.front.pyramid.mean(7), smoother.value());
        assertEquals(blocks.front.pyramid.mean(7), smoother.shown());
        assertEquals(0.01 / Math.sqrt(128), smoother.sigma(), 0.0004);
    }

    @Test
    void aStepIsFollowedAtOnce() {
        Gauss gauss = new Gauss(2);
        blocks.add(500, i -> 1 + 0.001 * gauss.next(), this::look);
        blocks.add(1, i -> 1.5, this::look);
        assertEquals(1.5, smoother.value());
        assertEquals(1.5, smoother.shown());
    }

    @Test
    void aMovementIsFollowedWithinItsNoise() {
        Gauss gauss = new Gauss(3);
        blocks.add(500, i -> 1 + 0.002 * i + 0.001 * gauss.next(), this::look);
        assertEquals(1 + 0.002 * 499, smoother.value(), 0.006);
    }

    @Test
    void oneDigitMoreIsNotMistakenForAMovement() {
        Gauss gauss = new Gauss(4);
        blocks.add(1000, i -> Math.rint(1000 + 0.3 + 0.2 * gauss.next()) / 1000, this::look);
        assertEquals(blocks.front.pyramid.mean(7), smoother.value());
    }

    /** A beat is averaged away for verdicts and shown to the eye. */
    @Test
    void slowNoiseIsSmoothedForVerdictsAndFollowedForTheEye() {
        double[] spread = new double[2];
        blocks.add(3000, i -> 1 + 0.003 * Math.sin(2 * Math.PI * 1.3 * Blocks.SECONDS * i), () -> {
            look();
            if (blocks.nowNanos() > 40_000_000_000L) {
                spread[0] = Math.max(spread[0], Math.abs(smoother.value() - 1));
                spread[1] = Math.max(spread[1], Math.abs(smoother.shown() - 1));
            }
        });
        assertTrue(spread[0] < 0.001, "value moves by " + spread[0]);
        assertTrue(spread[1] > 0.002, "shown moves by " + spread[1]);
    }

    @Test
    void aClearedOneShowsNothing() {
        blocks.add(10, i -> 1, this::look);
        assertEquals(1, smoother.value());
        smoother.clear();
        assertTrue(Double.isNaN(smoother.value()));
        assertTrue(Double.isNaN(smoother.shown()));
        assertTrue(Double.isNaN(smoother.sigma()));
    }
}
