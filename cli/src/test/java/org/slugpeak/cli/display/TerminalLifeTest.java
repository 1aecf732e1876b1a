package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TerminalLifeTest {

    private long nowNanos = -5;
    private boolean terminal = true;
    private int asked;

    private boolean ask() {
        asked++;
        return terminal;
    }

    @Test
    void aTerminalThatWentIsNoticedWithinASecond() {
        TerminalLife life = new TerminalLife(this::ask, () -> nowNanos);
        assertFalse(life.isGone());
        terminal = false;
        nowNanos += 1_000_000_000;
        assertTrue(life.isGone());
    }

    @Test
    void theSystemIsNotAskedAfterEachReading() {
        TerminalLife life = new TerminalLife(this::ask, () -> nowNanos);
        for (int i = 0; i < 1000; i++) {
            nowNanos += 10_000_000;
            assertFalse(life.isGone());
        }
        assertEquals(11, asked);
    }

    @Test
    void aPipeIsNoTerminalAndNeverGoes() {
        terminal = false;
        TerminalLife life = new TerminalLife(this::ask, () -> nowNanos);
        nowNanos += 10_000_000_000L;
        assertFalse(life.isGone());
    }
}
