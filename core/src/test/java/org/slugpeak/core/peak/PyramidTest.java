package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.grammar.Law;

class PyramidTest {

    private static Pyramid of(double... blocks) {
        Pyramid pyramid = new Pyramid();
        for (int i = 0; i < blocks.length; i++) {
            pyramid.add(10L * i, blocks[i]);
        }
        return pyramid;
    }

    @Law
    void itsMeansArePlainMeans(
            @ForAll @Size(min = 1, max = 1100) double[] drawn, @ForAll @DoubleRange(min = -1, max = 1) double shift) {
        double[] blocks = Arrays.stream(drawn).map(v -> Math.tanh(v) + shift).toArray();
        Pyramid pyramid = of(blocks);
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            int length = 1 << level;
            for (int windows = 1; windows <= 4 && pyramid.has(level, windows); windows++) {
                int end = blocks.length - (windows - 1) * length;
                double plain =
                        Arrays.stream(blocks, end - length, end).average().orElseThrow();
                assertEquals(plain, pyramid.mean(level, (windows - 1) * length), 1e-12);
            }
        }
    }

    @Law
    void theNewestMeanIsTheOneThatEndedJustNow(@ForAll @Size(min = 1, max = 600) double[] drawn) {
        Pyramid pyramid = of(Arrays.stream(drawn).map(Math::tanh).toArray());
        for (int level = 0; level < Pyramid.OCTAVES && pyramid.has(level, 1); level++) {
            assertEquals(pyramid.mean(level, 0), pyramid.mean(level));
        }
    }

    @Test
    void aWindowIsThereOnceItsBlocksAre() {
        Pyramid seven = of(1, 2, 3, 4, 5, 6, 7);
        assertEquals(7, seven.blocks());
        assertTrue(seven.has(0, 7));
        assertTrue(seven.has(1, 3));
        assertFalse(seven.has(1, 4));
        assertTrue(seven.has(2, 1));
        assertFalse(seven.has(2, 2));
    }

    @Test
    void theMiddleOfAWindowIsTheTimeOfItsMiddleBlock() {
        Pyramid pyramid = of(new double[300]);
        assertEquals(2990, pyramid.middleNanos(0));
        assertEquals(2980, pyramid.middleNanos(1));
        assertEquals(2970, pyramid.middleNanos(2));
        assertEquals(1710, pyramid.middleNanos(8));
    }

    @Test
    void aHugeValueLeavesNothingBehind() {
        double[] blocks = new double[600];
        Arrays.fill(blocks, 0.1);
        blocks[300] = 1e290;
        assertEquals(0.1, of(blocks).mean(8), 1e-15);
    }

    @Test
    void aClearedOneKnowsNoBlock() {
        Pyramid pyramid = of(1, 2, 3);
        pyramid.clear();
        assertFalse(pyramid.has(0, 1));
        pyramid.add(5, 7);
        assertEquals(7, pyramid.mean(0));
        assertFalse(pyramid.has(1, 1));
    }
}
