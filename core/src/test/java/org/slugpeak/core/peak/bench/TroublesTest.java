package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The bench of streams that went wrong counts what it says it counts. */
class TroublesTest {

    private static final long FIRST_SEED = 5_200_000;

    static List<Trouble> troubles() {
        return Troubles.all();
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void everyKindCountsTheSameOnTheSameSeeds(Trouble trouble) {
        int[] once = Troubles.counts(trouble, FIRST_SEED, 2);
        assertEquals(trouble.counted().size(), once.length);
        assertArrayEquals(once, Troubles.counts(trouble, FIRST_SEED, 2));
    }

    @Test
    void aScriptIsWhereItsSpeedTakesIt() {
        Script script = new Script(100, 40).rest(1).turnTo(-100).turnTo(0).rest(2);
        assertEquals(10.5, script.endSeconds(), 1e-9);
        assertEquals(100, script.degrees(0.9), 1e-9);
        assertEquals(0, script.degrees(3.5), 1e-9);
        assertEquals(-60, script.degrees(7), 1e-9);
        assertEquals(0, script.degrees(20), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1, false", "1.017, false", "0.98, true", "1.02, true", "0, true", "NaN, true", "Infinity, true"})
    void aBestIsOffBeyondFifteenHundredthsOfADecibel(double best, boolean off) {
        assertEquals(off, Trouble.off(best, 1));
    }
}
