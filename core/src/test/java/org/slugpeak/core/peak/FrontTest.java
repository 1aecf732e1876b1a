package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrontTest {

    private final Front front = new Front();
    private final Noted noted = new Noted();
    private double seconds;

    /** Notes what becomes of the readings. */
    private final class Noted implements Seeker {

        private final List<Long> blocks = new ArrayList<>();
        private final List<Double> means = new ArrayList<>();
        private final List<Boolean> behind = new ArrayList<>();
        private final List<Double> jumps = new ArrayList<>();
        private int gaps;
        private int interruptions;

        @Override
        public void block(long tNanos) {
            blocks.add(tNanos);
            means.add(front.pyramid.mean(0));
            behind.add(front.isBehind());
        }

        @Override
        public void gap() {
            gaps++;
        }

        @Override
        public void interrupted() {
            interruptions++;
        }

        @Override
        public void jump(long tNanos, double before) {
            jumps.add(before);
        }

        @Override
        public void restart() {}
    }

    private void read(double perSecond, double... values) {
        for (double value : values) {
            seconds += 1 / perSecond;
            front.accept(Math.round(1e9 * seconds), value, noted);
        }
    }

    private void rest(double perSecond, int count, double value) {
        for (int i = 0; i < count; i++) {
            read(perSecond, value + 0.001 * (i % 2));
        }
    }

    @Test
    void aSlowMetersReadingsAreBlocksOfTheirOwn() {
        read(10, 1, 1.01, 1.02, 1.03);
        assertEquals(List.of(1.0, 1.01, 1.02, 1.03), noted.means);
        assertEquals(List.of(100_000_000L, 200_000_000L, 300_000_000L, 400_000_000L), noted.blocks);
    }

    /** At 200 a second four readings make a block of 20 ms; what was in blocks of another size is left. */
    @Test
    void fastReadingsAreAveraged() {
        rest(200, 64, 1);
        assertTrue(noted.gaps >= 1);
        int before = noted.blocks.size();
        rest(200, 400, 1);
        assertEquals(100, noted.blocks.size() - before);
        assertEquals(1.0005, noted.means.get(before), 1e-9);
        assertTrue(front.pyramid.has(0, 100));
    }

    /** A reading of white noise has twice the sigma of a mean of four. */
    @Test
    void theNoiseOfABlockGoesWithItsReadings() {
        Gauss gauss = new Gauss(1);
        for (int i = 0; i < 1000; i++) {
            read(50, 1 + 0.01 * gauss.next());
        }
        double single = front.noise.white(0, 1);
        for (int i = 0; i < 160; i++) {
            read(200, 1 + 0.01 * gauss.next());
        }
        assertEquals(4, front.pace.blockSize());
        assertEquals(single / 2, front.noise.white(0, 1), 0.15 * single);
    }

    /** Three decibels are a factor of 1.41. */
    @ParameterizedTest
    @CsvSource({"1.38, 0", "1.43, 1", "0.72, 0", "0.70, 1", "0, 1", "-0.9, 1", "30, 1"})
    void threeDecibelsAtOnceAreAJumpAndLessIsNone(double after, int jumps) {
        rest(50, 100, 1);
        rest(50, 10, after);
        assertEquals(jumps, noted.jumps.size());
        if (jumps > 0) {
            assertEquals(1, noted.jumps.get(0), 0.002, "the level before it");
            assertFalse(front.pyramid.has(0, 11), "what was before it is left");
        }
    }

    @Test
    void anythingAfterZeroIsAJump() {
        for (int i = 0; i < 100; i++) {
            read(50, 0);
        }
        rest(50, 10, 0.2);
        assertEquals(List.of(0.0), noted.jumps);
    }

    /** On a slow meter a hand may take the reading anywhere, but not stand still before and behind. */
    @ParameterizedTest
    @CsvSource({
        "2, 2.1, 1",
        "2, 2.3, 0",
        "1.3, 1.31, 0",
        "0.6, 0.62, 1",
        "9.3, 11.1, 1",
        "8.5, 11.4, 0",
        "0.11, 0.09, 1"
    })
    void onASlowMeterAJumpStandsOrIsAPowerOfTen(double first, double second, int jumps) {
        rest(3, 30, 1);
        read(3, first, second);
        assertEquals(jumps, noted.jumps.size());
    }

    @ParameterizedTest
    @CsvSource({"186, 222, 1", "170, 228, 0", "2.2, 1.8, 1", "1700, 2100, 1", "700, 900, 0"})
    void aPowerOfTenIsOneFromAnyLevel(double first, double second, int jumps) {
        rest(3, 30, 20);
        read(3, first, second);
        assertEquals(jumps, noted.jumps.size());
    }

    @Test
    void ofReadingsThatComeLateOnlyTheLastIsSeenInTime() {
        rest(50, 100, 1);
        noted.behind.clear();
        read(50, 1.2, 1.2, 1.2);
        assertEquals(List.of(), noted.behind, "three strangers wait");
        read(50, 1.2);
        assertEquals(List.of(true, true, true, false), noted.behind);
    }

    @Test
    void aSpikeIsNoBlock() {
        rest(50, 100, 1);
        read(50, 3);
        rest(50, 2, 1);
        assertEquals(102, noted.blocks.size());
        assertEquals(List.of(), noted.jumps);
    }

    @Test
    void aPauseInterrupts() {
        rest(50, 100, 1);
        seconds += 3;
        rest(50, 5, 1);
        assertEquals(1, noted.interruptions);
        assertEquals(1, noted.gaps);
        assertFalse(front.pyramid.has(0, 6));
    }

    /** Nobody knows what comes next: even half the level is no jump. */
    @Test
    void soDoesAGapThatIsSaid() {
        rest(50, 100, 1);
        front.gap(noted);
        rest(50, 5, 0.5);
        assertEquals(1, noted.interruptions);
        assertEquals(1, noted.gaps);
        assertEquals(List.of(), noted.jumps);
        assertEquals(105, noted.blocks.size());
    }

    /** What was said to be a gap is none again because of the time it took. */
    @Test
    void thePauseAfterAGapThatWasSaidIsNoOther() {
        rest(50, 100, 1);
        front.gap(noted);
        seconds += 3;
        rest(50, 5, 1);
        assertEquals(1, noted.interruptions);
    }

    /** A larger signal may bring more noise along, which is learnt from the jump on. */
    @Test
    void afterAJumpTheNoiseIsAnother() {
        Gauss gauss = new Gauss(1);
        for (int i = 0; i < 600; i++) {
            read(50, 1 + 0.001 * gauss.next());
        }
        for (int i = 0; i < 40; i++) {
            read(50, 2 + 0.002 * gauss.next());
        }
        assertEquals(1, noted.jumps.size());
        assertEquals(0.002, front.noise.white(0, 2), 0.000_8);
        assertTrue(front.noise.seen() < 40);
    }

    @Test
    void theReadingsOfAnUnfinishedBlockAreLeftAtAGap() {
        rest(200, 402, 1);
        front.gap(noted);
        int before = noted.blocks.size();
        rest(200, 3, 5);
        assertEquals(before, noted.blocks.size());
        read(200, 5);
        assertEquals(5, noted.means.get(before), 0.002);
    }

    /** Means of 1, 2, 4 ... 256 blocks of 20 ms, as far as they are filled. */
    @ParameterizedTest
    @CsvSource({"0.01, 0", "0.03, 0", "0.05, 1", "0.35, 4", "1.5, 6", "9, 8"})
    void theLongestMeanWithinATimeIsFound(double withinSeconds, int level) {
        rest(50, 300, 1);
        assertEquals(level, front.octave(withinSeconds));
    }

    @Test
    void aMeanThatIsNotFilledIsNotFound() {
        rest(50, 100, 1);
        assertEquals(6, front.octave(9));
    }
}
