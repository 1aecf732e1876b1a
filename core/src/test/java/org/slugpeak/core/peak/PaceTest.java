package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 10, 40})
    void aSlowMetersBlocksNeverChange(double perSecond) {
        Pace pace = new Pace();
        for (int i = 0; i < 64; i++) {
            assertFalse(pace.look(1 / perSecond));
        }
    }

    /** 3 fit at 150/s, and 3 times 1.3 is still more than 3.5; at 100/s it is not. */
    @Test
    void aRateThatFallsALittleLeavesThemToo() {
        Pace pace = at(200, 64);
        for (int i = 0; i < 64; i++) {
            pace.look(1 / 150.0);
        }
        assertEquals(4, pace.blockSize());
        for (int i = 0; i < 64; i++) {
            pace.look(1 / 100.0);
        }
        assertEquals(2, pace.blockSize());
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

    /** So short a record of the interval may be wrong. */
    @Test
    void theFirstLookIsAtTheEighthReading() {
        Pace pace = new Pace();
        for (int i = 1; i < 8; i++) {
            assertFalse(pace.look(0.005));
        }
        assertTrue(pace.look(0.005));
    }
}
