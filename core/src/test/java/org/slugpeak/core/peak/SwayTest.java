package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwayTest {

    private final Blocks blocks = new Blocks();
    private final Sway sway = new Sway();
    private final SplittableRandom random = new SplittableRandom(11);

    private void feed(double seconds, IntToDoubleFunction level) {
        blocks.add(
                (int) Math.round(seconds / Blocks.SECONDS),
                i -> level.applyAsDouble(i) + 0.0005 * random.nextGaussian(),
                () -> sway.look(blocks.nowNanos(), blocks.front));
    }

    private static IntToDoubleFunction beat(double part, double hertz) {
        return i -> 1 + part * Math.sin(2 * Math.PI * hertz * i * Blocks.SECONDS);
    }

    /** Peak to peak it is twice the amplitude; a fall beyond it needs a fifth more. A mean over a third of the period shows nearly all of it. */
    @ParameterizedTest
    @CsvSource({"0.005, 0.3", "0.01, 1", "0.03, 0.1", "0.02, 2"})
    void aBeatIsKnownAfterTwoPeriods(double part, double hertz) {
        feed(2.5 / hertz, beat(part, hertz));
        assertEquals(1.2 * 2 * part, sway.within(0.02), 0.2 * 2 * part);
        assertEquals(1.2 * 2 * part / (Math.PI * 5), sway.within(5 / hertz), 0.05 * 2 * part);
    }

    @Test
    void isForgottenWhenItStops() {
        feed(3, beat(0.02, 1));
        assertTrue(sway.within(0.02) > 0);
        feed(21, i -> 1);
        assertEquals(0, sway.within(0.02));
    }

    @Test
    void noiseIsNoSway() {
        feed(600, i -> 1);
        assertEquals(0, sway.within(0.02));
    }

    /** Up from afar, past the top, back more slowly, and there it stays. */
    @Test
    void aHandThatComesBackMoreSlowlyIsNoSway() {
        feed(3, i -> 0.4 + 0.004 * i);
        feed(1, i -> 1 - 0.001 * i);
        feed(2, i -> 0.95 + 0.0005 * i);
        feed(3, i -> 1);
        assertEquals(0, sway.within(0.02));
    }
}
