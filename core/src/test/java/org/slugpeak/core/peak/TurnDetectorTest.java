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
import org.slugpeak.core.peak.TurnDetector.Turn;

class TurnDetectorTest {

    private final Blocks blocks = new Blocks();
    private final TurnDetector test = new TurnDetector(new Sway());
    private final List<Turn> turns = new ArrayList<>();

    @BeforeEach
    void begin() {
        test.forget(Blocks.SECONDS);
    }

    private void feed(int count, IntToDoubleFunction level) {
        blocks.add(count, level, () -> {
            Turn turn = test.look(blocks.front.pyramid, blocks.front.noise);
            if (turn != Turn.NONE) {
                turns.add(turn);
                test.restart(Blocks.SECONDS);
            }
        });
    }

    @Test
    void aRiseAndAFallAreOneTurnEach() {
        feed(50, i -> 0.5);
        feed(50, i -> 0.5 + 0.005 * i);
        feed(50, i -> 0.75 - 0.005 * i);
        feed(50, i -> 0.5 + 0.005 * i);
        assertEquals(List.of(Turn.BEGAN_UP, Turn.DOWN, Turn.UP), turns);
        assertEquals(1, test.direction());
    }

    @Test
    void aFallFromTheStartBegins() {
        feed(50, i -> 0.5);
        feed(50, i -> 0.5 - 0.005 * i);
        assertEquals(List.of(Turn.BEGAN_DOWN), turns);
        assertEquals(-1, test.direction());
    }

    @Test
    void restIsNoTurn() {
        Gauss gauss = new Gauss(1);
        feed(20_000, i -> 1 + 0.01 * gauss.next());
        assertEquals(List.of(), turns);
        assertEquals(0, test.direction());
    }

    /** One digit is what any reading may be off by; two digits are a fall. */
    @ParameterizedTest
    @CsvSource({"1, 0", "2, 1"})
    void aFallByTheLastDigitIsNone(int digits, int falls) {
        feed(101, i -> (400 + i) / 1000.0);
        feed(2000, i -> 0.5);
        assertEquals(0.001, blocks.front.noise.step(), 1e-9);
        turns.clear();
        feed(400, i -> 0.5 - 0.001 * digits);
        assertEquals(falls, turns.size());
    }

    @Test
    void aFallSmallerThanTheLeastIsNone() {
        test.least(0.01);
        feed(100, i -> 0.5 + 0.0002 * i);
        turns.clear();
        feed(200, i -> Math.max(0.516, 0.52 - 0.0002 * i));
        assertEquals(List.of(), turns);
        feed(100, i -> 0.51);
        assertEquals(List.of(Turn.DOWN), turns);
    }

    @Test
    void whatIsAssumedNeedsOnlyTheOtherTurn() {
        feed(100, i -> 0.5);
        test.assumeUp(Blocks.SECONDS);
        feed(50, i -> 0.5 - 0.005 * i);
        assertEquals(List.of(Turn.DOWN), turns);
        test.assumeDown(Blocks.SECONDS);
        turns.clear();
        feed(50, i -> 0.25 - 0.001 * i);
        assertEquals(List.of(), turns);
        feed(50, i -> 0.2 + 0.005 * i);
        assertEquals(List.of(Turn.UP), turns);
    }

    /** The longest mean, of 256 blocks, rises until it holds nothing but the rest. */
    @Test
    void itKnowsHowLongTheLevelHasNotRisen() {
        feed(100, i -> 0.5 + 0.002 * i);
        assertTrue(test.blocksSinceRise() <= 1);
        feed(1000, i -> 0.698);
        assertEquals(1000.0 - 256, (double) test.blocksSinceRise(), 32);
    }
}
