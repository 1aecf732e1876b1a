package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaceTest {

    private static Pace at(double perSecond, int readings) {
        Pace pace = new Pace();
        for (int i = 0; i < readings; i++) {
            pace.look(1 / perSecond);
        }
        return pace;
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "10, 1", "50, 1", "100, 2", "200, 4", "500, 10", "1000, 20", "10000, 200"})
    void aBlockTakesATwentiethOfASecondAtMostAndAReadingAtLeast(double perSecond, int readings) {
        Pace pace = at(perSecond, 64);
        assertEquals(readings, pace.blockSize());
        assertEquals(1 / perSecond, pace.intervalSeconds(), 1e-12);
        assertEquals(readings / perSecond, pace.blockSeconds(), 1e-12);
    }

    @Test
    void saysSoWhenBlocksChange() {
        Pace pace = new Pace();
        int changes = 0;
        for (int i = 0; i < 64; i++) {
            changes += pace.look(0.005) ? 1 : 0;
        }
        assertEquals(1, changes);
    }

    /** 4 readings fit at 200/s; a look finds 5.2 or more, which is 1.3 times as many, on the way from 5 to 6. */
    @Test
    void aRateThatChangesALittleLeavesTheBlocks() {
        Pace pace = at(200, 64);
        for (int i = 0; i < 400; i++) {
            assertTrue(!pace.look(1 / 240.0));
        }
        assertEquals(4, pace.blockSize());
        for (int i = 0; i < 400; i++) {
            pace.look(1 / 300.0);
        }
        assertEquals(6, pace.blockSize());
    }
}
