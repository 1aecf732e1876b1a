package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarScaleTest {

    @ParameterizedTest
    @CsvSource({"0,1", "24,0", "60,0"})
    void theBarIsFullAtTheBestAndEmptyFarAway(double distanceDb, double filled) {
        assertEquals(filled, BarScale.filled(distanceDb), 1e-12);
    }

    @Test
    void theBarNeverGrowsWithDistanceAndIsFinestAtTheBest() {
        double before = BarScale.filled(0);
        double stepBefore = Double.MAX_VALUE;
        for (double distanceDb = 0.1; distanceDb < 24; distanceDb += 0.1) {
            double filled = BarScale.filled(distanceDb);
            assertTrue(filled < before);
            assertTrue(before - filled < stepBefore);
            stepBefore = before - filled;
            before = filled;
        }
    }

    @Test
    void aTenthOfADecibelMovesTheBarOnTheSmallestWindow() {
        int cells = 40 - 7 - 1;
        assertTrue(cells * (BarScale.filled(0) - BarScale.filled(0.1)) >= 1);
    }
}
