package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mica capacitor that makes and breaks, at 50 readings a second. */
class JumpWatchTest {

    private final JumpWatch watch = new JumpWatch();
    private long tNanos;
    private int firm;

    private void read(double seconds, double level) {
        for (int i = 0; i < Math.round(50 * seconds); i++) {
            tNanos += 20_000_000;
            firm += watch.accept(tNanos, level) ? 1 : 0;
        }
    }

    private static double db(double db) {
        return Math.pow(10, db / 20);
    }

    private void toAndFro(double db, int jumps) {
        read(2, 0.3);
        for (int i = 1; i <= jumps; i++) {
            read(2, 0.3 * (i % 2 == 1 ? db(db) : 1));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1, 0",
        "3, 2, 1",
        "-3, 2, 1",
        "3, 9, 1",
        "1.4, 9, 0",
        "1.6, 2, 1",
        "5.5, 2, 1",
        "5.7, 9, 0",
        "-20, 9, 0"
    })
    void twoJumpsOfThatSizeMakeTheSuspicionFirmOnce(double db, int jumps, int times) {
        toAndFro(db, jumps);
        assertEquals(times, firm);
    }

    @Test
    void aHandIsNoJump() {
        for (int way = 0; way < 4; way++) {
            for (int i = 0; i < 100; i++) {
                read(0.02, 0.3 * db(3.0 * (way % 2 == 0 ? i : 100 - i) / 100));
            }
            read(1, 0.3 * db(way % 2 == 0 ? 3 : 0));
        }
        assertEquals(0, firm);
    }

    /** What goes on moving after a step is a hand that has begun to turn fast. */
    @Test
    void aLevelThatDoesNotStandAgainHasNotJumped() {
        for (int way = 0; way < 4; way++) {
            read(2, 0.3);
            for (int i = 0; i < 60; i++) {
                read(0.02, 0.3 * db(2 + 0.05 * i));
            }
        }
        assertEquals(0, firm);
    }

    @Test
    void aLevelThatDidNotStandBeforeHasNotJumped() {
        for (int way = 0; way < 4; way++) {
            for (int i = 0; i < 60; i++) {
                read(0.02, 0.3 * db(0.2 * i));
            }
            read(0.2, 0.3 * db(15));
        }
        assertEquals(0, firm);
    }

    @Test
    void aSpikeIsNoJump() {
        for (int i = 0; i < 6; i++) {
            read(2, 0.3);
            read(0.06, 0.3 * db(3));
        }
        read(2, 0.3);
        assertEquals(0, firm);
    }

    @Test
    void whatChangesOverAGapIsNone() {
        for (int i = 0; i < 6; i++) {
            read(2, 0.3 * db(i % 2 * 3));
            watch.gap();
        }
        assertEquals(0, firm);
        read(0.1, 0.3 * db(3));
        watch.gap();
        read(2, 0.3);
        assertEquals(0, firm, "nor is one that a gap follows before it is judged");
    }
}
