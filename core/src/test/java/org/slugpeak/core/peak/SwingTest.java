package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which swings to and fro are a sway, how large, and for how long. Swings are given in parts of the level, and in seconds. */
class SwingTest {

    private static final double SHORT_MEAN = 0.02;

    private final Watched level = new Watched();
    private final Sway sway = new Sway();
    private double at = 1;
    private double direction = 1;

    @BeforeEach
    void aLevelThatRests() {
        level.rest(1, 1);
        level.by(t -> sway.look(t, level.blocks.front));
    }

    /** One way, and the next time the other way. */
    private void swing(double part, double seconds) {
        double from = at;
        double to = from + direction * part;
        level.follow(seconds, t -> from + (to - from) * t / seconds);
        at = to;
        direction = -direction;
    }

    /** A little back, so that the last point is seen to be one; the level stays there. */
    private void turn() {
        double to = at + direction * 0.01;
        level.follow(0.1, t -> to);
        at = to;
    }

    private double size() {
        return sway.within(SHORT_MEAN) / Watched.VOLTS;
    }

    private void assertSway(boolean expected) {
        assertEquals(expected, size() > 0, "size " + size());
    }

    /** A hand comes back more slowly, or not all the way. */
    @ParameterizedTest
    @CsvSource({
        "1.1, 1.0, true",
        "1.2, 1.0, false",
        "1.0, 1.2, true",
        "1.0, 1.3, false",
        "0.91, 0.85, true",
        "0.8, 1, false"
    })
    void aDipAsQuickAndAsHighBackAsDownIsOne(double sizeFactor, double timeFactor, boolean isSway) {
        swing(0.04, 2);
        swing(0.04 * sizeFactor, 2 * timeFactor);
        turn();
        assertSway(isSway);
    }

    @ParameterizedTest
    @CsvSource({
        "1.3, 1.0, true",
        "1.4, 1.0, false",
        "1.0, 1.55, true",
        "1.0, 1.7, false",
        "0.76, 0.65, true",
        "0.7, 1, false"
    })
    void threeSwingsMayBeLessAlike(double sizeFactor, double timeFactor, boolean isSway) {
        swing(0.04, 2);
        swing(0.04 * sizeFactor, 2 * timeFactor);
        assertSway(false);
        swing(0.04, 2);
        turn();
        assertSway(isSway);
    }

    @Test
    void oneSwingIsNone() {
        swing(0.04, 2);
        turn();
        assertSway(false);
    }

    /** A fall has to be larger by a fifth; a mean over T of swings with the period P shows P / (pi T) of them. */
    @Test
    void itIsAsLargeAsTheMeanOfItsSwings() {
        swing(0.04, 2);
        swing(0.05, 2);
        swing(0.04, 2);
        turn();
        assertEquals(1.2 * 0.13 / 3, size(), 0.002);
        assertEquals(1.2 * 0.13 / 3 * 4 / (Math.PI * 10), sway.within(10) / Watched.VOLTS, 0.001);
    }

    /** More than eight percent is a hand that sweeps. */
    @ParameterizedTest
    @CsvSource({"0.07, true", "0.09, false"})
    void noHumMovesAReadingFurther(double part, boolean isSway) {
        swing(part, 2);
        swing(part, 2);
        swing(part, 2);
        turn();
        assertSway(isSway);
    }

    /** Three periods of two seconds. */
    @Test
    void itIsForgottenAfterThreePeriods() {
        swing(0.04, 1);
        swing(0.04, 1);
        turn();
        level.rest(5.7, at);
        assertSway(true);
        level.rest(0.5, at);
        assertSway(false);
    }

    @Test
    void afterFourTurnsAlikeItLastsForTwentySeconds() {
        for (int i = 0; i < 5; i++) {
            swing(0.04, 0.5);
        }
        turn();
        level.rest(19, at);
        assertSway(true);
        level.rest(1.5, at);
        assertSway(false);
    }

    /** What may have been a hand is forgotten with the adjuster. */
    @ParameterizedTest
    @CsvSource({"4, false", "5, true"})
    void theNextAdjusterKeepsOnlyWhatIsSurelyNoHand(int swings, boolean isSway) {
        for (int i = 0; i < swings; i++) {
            swing(0.04, 0.5);
        }
        turn();
        assertSway(true);
        sway.restart();
        assertSway(isSway);
    }

    @Test
    void aSwingUnlikeTheOthersBreaksTheRow() {
        for (int i = 0; i < 5; i++) {
            swing(0.04, 0.5);
        }
        swing(0.02, 1.5);
        turn();
        assertSway(true);
        sway.restart();
        assertSway(false);
    }

    @Test
    void swingsBeforeAGapDoNotCount() {
        swing(0.04, 2);
        sway.gap();
        swing(0.04, 2);
        turn();
        assertSway(false);
    }

    /** Half a second up, half a second down, by the last digit of the meter. */
    @Test
    void oneDigitToAndFroIsNone() {
        for (int i = 0; i < 10; i++) {
            level.rest(0.5, 1 + 0.01 * (i % 2));
        }
        assertTrue(level.blocks.front.noise.step() > 0);
        assertSway(false);
    }
}
