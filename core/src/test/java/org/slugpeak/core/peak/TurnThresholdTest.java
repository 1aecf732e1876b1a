package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.TurnDetector.Turn;

/** How far a level has to fall, and when that is told. Noise is one percent of the level. */
class TurnThresholdTest {

    private static final double SIGMA = 0.01;

    private Blocks blocks = new Blocks();
    private TurnDetector turns = new TurnDetector(new Sway());
    private Gauss gauss = new Gauss(0);
    private double blockSeconds = Blocks.SECONDS;
    private final List<Turn> told = new ArrayList<>();
    private int lookedAt;
    private int toldAt;

    @BeforeEach
    void begin() {
        begin(1);
    }

    private void begin(long seed) {
        blocks = new Blocks();
        turns = new TurnDetector(new Sway());
        gauss = new Gauss(seed);
        turns.forget(blockSeconds);
        told.clear();
    }

    private void feed(int count, IntToDoubleFunction level) {
        lookedAt = 0;
        blocks.add(count, level, () -> {
            lookedAt++;
            Turn turn = turns.look(blocks.front.pyramid, blocks.front.noise);
            if (turn != Turn.NONE) {
                told.add(turn);
                toldAt = lookedAt;
                turns.restart(blockSeconds);
            }
        });
    }

    private void noisy(int count, IntToDoubleFunction level) {
        feed(count, i -> level.applyAsDouble(i) + SIGMA * gauss.next());
    }

    private void restAtTheTop(int count) {
        noisy(600, i -> 1);
        turns.assumeUp(blockSeconds);
        noisy(count, i -> 1);
    }

    @Test
    void aTurnIsToldSoonAfterTheTurningPoint() {
        feed(150, i -> 0.5);
        feed(50, i -> 0.5 + 0.005 * i);
        feed(50, i -> 0.75 - 0.005 * i);
        assertTrue(toldAt <= 5, "down after " + toldAt);
        feed(100, i -> 0.5 + 0.001 * i);
        assertEquals(List.of(Turn.BEGAN_UP, Turn.DOWN, Turn.UP), told);
        assertTrue(toldAt <= 8, "up after " + toldAt);
    }

    /** Before the turn of a slow valley the level has long been as high as after it. */
    @Test
    void aRiseCountsFromTheBottomAndAFallFromTheTop() {
        feed(150, i -> 0.8);
        turns.assumeDown(blockSeconds);
        feed(100, i -> 0.8 - 0.002 * i);
        feed(20, i -> 0.6 + 0.002 * i);
        assertEquals(List.of(Turn.UP), told);
        feed(60, i -> 0.64 + 0.002 * i);
        feed(20, i -> 0.76 - 0.002 * i);
        assertEquals(List.of(Turn.UP, Turn.DOWN), told);
    }

    /** A small spike looks like a fall in a single block of 20 ms. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void ofQuickBlocksOneLowOneIsNoFallAndTwoAre(long seed) {
        begin(seed);
        restAtTheTop(60);
        noisy(1, i -> 1 - 6.7 * SIGMA);
        noisy(30, i -> 1);
        assertEquals(List.of(), told);
        noisy(2, i -> 1 - 12 * SIGMA);
        assertEquals(List.of(Turn.DOWN), told);
    }

    @Test
    void ofSlowBlocksOneIsEnough() {
        blockSeconds = 0.5;
        begin(1);
        restAtTheTop(60);
        noisy(1, i -> 1 - 12 * SIGMA);
        assertEquals(List.of(Turn.DOWN), told);
        assertEquals(1, toldAt);
    }

    /** Means of one, two and four readings are used however slow the meter is; of eight, which show a smaller fall, only up to six seconds. */
    @ParameterizedTest
    @CsvSource({"0.7, 2.2, 12, 20", "0.8, 2.2, 0, 5", "0.8, 4, 20, 20", "5, 4, 20, 20"})
    void aSlowMeterTellsASmallFallOnlyWithinSixSeconds(double secondsOfABlock, double sigmas, int least, int most) {
        blockSeconds = secondsOfABlock;
        int falls = 0;
        for (long seed = 1; seed <= 20; seed++) {
            begin(seed);
            restAtTheTop(400);
            noisy(16, i -> 1 - sigmas * SIGMA);
            falls += told.size();
        }
        assertTrue(falls >= least && falls <= most, "told " + falls + " times in 20");
    }

    @Test
    void whatCameBeforeAnAssumptionIsNeitherHighNorLow() {
        noisy(300, i -> 1);
        turns.assumeUp(blockSeconds);
        noisy(300, i -> 0.5);
        assertEquals(List.of(), told);
        turns.assumeDown(blockSeconds);
        noisy(300, i -> 1);
        assertEquals(List.of(), told);
    }

    /**
     * Once in twelve hours asks for five sigma of a mean below the level, two more below the highest mean: a fall of one sigma is known from 25
     * blocks or, as windows are 16 and 32 blocks long, a little later; one of three sigma from 3 or 4.
     */
    @ParameterizedTest
    @CsvSource({"1, 22, 38", "3, 3, 5", "0.7, 38, 80"})
    void theDeeperAFallTheSoonerItIsTold(double sigmas, int least, int most) {
        List<Integer> delays = new ArrayList<>();
        for (long seed = 1; seed <= 15; seed++) {
            begin(seed);
            restAtTheTop(300);
            noisy(600, i -> 1 - sigmas * SIGMA);
            assertEquals(List.of(Turn.DOWN), told);
            delays.add(toldAt);
        }
        delays.sort(null);
        int median = delays.get(7);
        assertTrue(median >= least && median <= most, "told after " + delays);
    }

    /** The highest mean is remembered for 8 to 16 windows; the longest have 256 blocks, so that some begin anew at block 2048. */
    @ParameterizedTest
    @ValueSource(ints = {1700, 1900, 2000, 2040, 2048, 2100, 2300})
    void aSmallFallIsToldWheneverItComes(int afterBlocks) {
        begin(afterBlocks);
        restAtTheTop(afterBlocks);
        noisy(1000, i -> 1 - 0.5 * SIGMA);
        assertEquals(List.of(Turn.DOWN), told);
    }

    /** Three hundredths of a sigma in 16 of the longest windows, a sigma and a half altogether. */
    @Test
    void aDriftIsNoFall() {
        restAtTheTop(300);
        double total = 1.5;
        int blocksOfDrift = 200_000;
        noisy(blocksOfDrift, i -> 1 - total * SIGMA * i / blocksOfDrift);
        assertEquals(List.of(), told);
    }
}
