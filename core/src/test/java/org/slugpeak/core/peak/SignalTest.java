package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.Signal.Seen;

/** Levels are in parts of the one before; the best was 1.05 of it. */
class SignalTest {

    private static final Best.Mark MARK = new Best.Mark(1.05 * Watched.VOLTS, 0.001, 7);

    private final Told told = new Told();
    private final Watched level = new Watched();
    private final Best best = new Best(level.blocks.front);
    private final Signal signal = new Signal(best, told);
    private final List<Seen> seen = new ArrayList<>();

    @BeforeEach
    void aLevelAndABest() {
        best.recall(MARK);
        level.rest(3, 1);
        level.by(t -> {
            if (!signal.isSettled()) {
                seen.add(signal.look(t, level.sight));
            }
        });
    }

    private void jumpTo(double newLevel, double seconds) {
        signal.jumped(level.nowNanos(), level.sight.level.value());
        seen.clear();
        level.jump();
        level.rest(seconds, newLevel);
    }

    private Seen last() {
        return seen.get(seen.size() - 1);
    }

    @Test
    void nothingIsJudgedForASecondAfterAJump() {
        assertTrue(signal.isSettled());
        jumpTo(1, 0.98);
        assertFalse(signal.isSettled());
        assertEquals(Seen.AWAY, last());
        level.rest(0.02, 1);
        assertEquals(Seen.GOES_ON, last());
        assertTrue(signal.isSettled());
        assertEquals(List.of(), told.words());
    }

    @Test
    void aTwentiethIsNoSignal() {
        jumpTo(0.04, 1.2);
        assertEquals(Seen.AWAY, last());
        assertEquals(List.of("signal-gone"), told.words());
        assertEquals(0.04, told.first("signal-gone").value(), 1e-6);
        assertFalse(signal.isSettled());
        assertEquals(MARK, best.mark());
    }

    /** From a tenth of what it was before it is back, wherever the slug has been turned meanwhile. */
    @ParameterizedTest
    @CsvSource({"0.11, 19.2", "0.2, 13.98", "0.85, 1.41", "1, 0"})
    void aTenthIsASignalAgainAndTheBestIsWhatItWas(double back, double apartDb) {
        jumpTo(0, 3);
        jumpTo(back, 1);
        assertEquals(Seen.GOES_ON, last());
        assertEquals(List.of("signal-gone", "signal-back"), told.words());
        assertEquals(apartDb, told.first("signal-back").value(), 0.05);
        assertEquals(MARK, best.mark());
        assertTrue(signal.isSettled());
    }

    @Test
    void lessThanATenthIsNone() {
        jumpTo(0, 3);
        jumpTo(0.09, 3);
        assertEquals(Seen.AWAY, last());
        assertEquals(List.of("signal-gone"), told.words());
    }

    @Test
    void aSmallLevelThatGoesOnForTenSecondsIsAnotherLevel() {
        jumpTo(0.04, 10.9);
        assertEquals(Seen.AWAY, last());
        level.rest(0.12, 0.04);
        assertTrue(seen.contains(Seen.OTHER_LEVEL));
        assertEquals(List.of("signal-gone", "best-aged"), told.words());
        assertEquals(20 * Math.log10(1.05 / 0.04), told.first("best-aged").value(), 0.01);
        assertFalse(best.known());
        assertTrue(signal.isSettled());
    }

    @Test
    void noiseAroundNothingIsNeverALevel() {
        jumpTo(0, 1);
        Gauss gauss = new Gauss(1);
        level.follow(30, t -> 0.02 * gauss.next());
        assertEquals(Seen.AWAY, last());
        assertEquals(List.of("signal-gone"), told.words());
        assertTrue(best.known());
    }

    @Test
    void aLowerLevelBeginsTheBestAnew() {
        jumpTo(0.5, 1);
        assertEquals(Seen.OTHER_LEVEL, last());
        assertEquals(List.of("best-aged"), told.words());
        assertEquals(20 * Math.log10(1.05 / 0.5), told.first("best-aged").value(), 0.01);
        assertFalse(best.known());
    }

    @Test
    void theOldBestIsKnownAgainWhenTheOldLevelComesBack() {
        jumpTo(0.5, 3);
        jumpTo(1.05, 1);
        assertEquals(Seen.GOES_ON, last());
        assertEquals(List.of("best-aged", "signal-back"), told.words());
        assertEquals(20 * Math.log10(1.05), told.first("signal-back").value(), 1e-6, "from the old level");
        assertEquals(MARK, best.mark());
        jumpTo(0.5, 3);
        assertEquals(2, told.count("best-aged"), "the level may be turned down again");
    }

    @Test
    void theOldBestIsKnownAgainAlsoFromAlmostNothing() {
        jumpTo(0.04, 12);
        jumpTo(1, 1);
        assertEquals(List.of("signal-gone", "best-aged", "signal-back"), told.words());
        assertEquals(MARK, best.mark());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.8, 1.3})
    void anotherLevelIsNotTheOldOne(double other) {
        jumpTo(0.5, 3);
        jumpTo(other, 1);
        assertEquals(List.of("best-aged"), told.words());
        assertFalse(best.known());
    }

    @Test
    void theNextAdjusterKnowsNoOldBest() {
        jumpTo(0.5, 3);
        signal.restart();
        jumpTo(1, 1);
        assertFalse(best.known());
        assertEquals(List.of("best-aged"), told.words());
    }

    @Test
    void theNextAdjusterIsNotAway() {
        jumpTo(0, 3);
        signal.restart();
        assertTrue(signal.isSettled());
        signal.jumped(level.nowNanos(), 0);
        signal.restart();
        assertTrue(signal.isSettled());
    }

    @Test
    void whereThereIsNoBestNothingIsLowered() {
        best.forget();
        jumpTo(0.5, 1);
        assertEquals(Seen.GOES_ON, last());
        assertEquals(List.of(), told.words());
    }
}
