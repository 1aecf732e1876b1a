package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A number that is typed in the middle of a session: what would be wishes elsewhere is text here. */
class TypedEntryTest {

    private final Keys keys = new Keys();

    @BeforeEach
    void aCounterMayBeRead() {
        keys.typeAfter(KeyAction.COUNTER);
    }

    private void type(String... names) {
        for (String name : names) {
            assertTrue(keys.type(name), name);
        }
    }

    @Test
    void whatIsTypedIsTakenAtEnterAndNoKeyOfItAsksForAnything() {
        keys.put(KeyAction.COUNTER);
        assertEquals(Optional.of(""), keys.entry());
        type("4", "5", "6", ".", "1", "backspace", "2");
        assertEquals(Optional.of("456.2"), keys.entry());
        assertEquals(Optional.empty(), keys.pollTyped());
        type("enter");
        assertEquals(Optional.of("456.2"), keys.pollTyped());
        assertEquals(Optional.empty(), keys.pollTyped());
        assertEquals(Optional.empty(), keys.poll());
        assertFalse(keys.type("q"), "then keys are keys again");
    }

    @Test
    void escapeAndAnEmptyEntryLeaveNothing() {
        keys.put(KeyAction.COUNTER);
        type("4", "escape");
        keys.put(KeyAction.COUNTER);
        type("backspace", "enter");
        assertEquals(Optional.empty(), keys.pollTyped());
        assertEquals(Optional.empty(), keys.entry());
    }

    @Test
    void aPedalAndTheClosedTerminalAreHeardAllTheSame() {
        keys.put(KeyAction.COUNTER);
        assertFalse(keys.type("f13"));
        keys.put(KeyAction.HANG_UP);
        assertEquals(Optional.of(KeyAction.HANG_UP), keys.poll());
    }

    @Test
    void anEntryHasAnEnd() {
        keys.put(KeyAction.COUNTER);
        for (int i = 0; i < 100; i++) {
            type("7");
        }
        assertEquals(Optional.of("777777777777"), keys.entry());
    }

    @Test
    void whereNothingIsToBeTypedTheKeyIsAKey() {
        Keys others = new Keys();
        others.put(KeyAction.COUNTER);
        assertEquals(Optional.empty(), others.entry());
        assertEquals(Optional.of(KeyAction.COUNTER), others.poll());
    }
}
