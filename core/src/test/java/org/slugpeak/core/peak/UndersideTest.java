package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class UndersideTest {

    private final Blocks blocks = new Blocks();
    private final Sight sight = new Sight(blocks.front);
    private final Orientation orientation = new Orientation(Seek.PEAK);
    private final Underside underside = new Underside(orientation);
    private final SplittableRandom random = new SplittableRandom(17);

    private void feed(double seconds, IntToDoubleFunction level) {
        blocks.add((int) Math.round(seconds / Blocks.SECONDS), level, () -> {
            sight.look(blocks.nowNanos());
            if (sight.isReady()) {
                underside.look(blocks.nowNanos(), sight);
            }
        });
    }

    /** Up and down with a period of a second. */
    private static IntToDoubleFunction swings(double size) {
        return i -> size * Math.sin(2 * Math.PI * i * Blocks.SECONDS);
    }

    @Test
    void whatNeverWentBelowNothingStandsOut() {
        feed(1, i -> 0.001);
        assertTrue(underside.standsOut());
    }

    @Test
    void whiteNoiseAloneHidesNothing() {
        feed(50, i -> 0.01 * random.nextGaussian());
        underside.restart();
        feed(1, i -> 0.03 + 0.01 * random.nextGaussian());
        assertTrue(underside.standsOut());
    }

    @Test
    void aLevelStandsOutFromSixTimesAsFarAsNoiseGoesBelow() {
        feed(5, swings(0.1));
        assertFalse(underside.standsOut());
        feed(1, i -> 0.55);
        assertFalse(underside.standsOut());
        feed(1, i -> 0.65);
        assertTrue(underside.standsOut());
    }

    @Test
    void noiseThatHasEndedIsForgottenAfterTwoMinutes() {
        feed(5, swings(0.1));
        feed(50, i -> 0.1);
        assertFalse(underside.standsOut());
        feed(70, i -> 0.1);
        assertTrue(underside.standsOut());
    }

    /** Between two adjusters a set may be switched off, and a clip moved. */
    @Test
    void eachAdjusterShowsItsOwnNoise() {
        feed(5, swings(0.1));
        underside.restart();
        feed(1, i -> 0.3);
        assertTrue(underside.standsOut());
    }

    /** Its resting voltage goes, so that it reads less than nothing, and comes back. */
    @Test
    void aSetThatIsSwitchedOffOnceIsNoNoise() {
        feed(2, i -> 0.001);
        feed(3, i -> -0.232);
        feed(1, i -> 0.5);
        assertTrue(underside.standsOut());
    }

    @Test
    void whatStaysBelowIsASignalOfTheOtherSign() {
        feed(1, i -> 0.01);
        feed(1, i -> -0.05);
        orientation.polarity(-1);
        underside.restart();
        feed(1, i -> -0.05);
        assertTrue(underside.standsOut());
    }

    private void takeForTheSign(int sign, double level) {
        orientation.polarity(sign);
        underside.restart();
        feed(1, i -> level);
    }

    @Test
    void whatIsTakenForTheSignalsSignAndBackAgainIsNoise() {
        feed(1, i -> 0.01);
        takeForTheSign(-1, -0.05);
        takeForTheSign(1, 0.05);
        takeForTheSign(-1, -0.2);
        assertFalse(underside.standsOut());
    }
}
