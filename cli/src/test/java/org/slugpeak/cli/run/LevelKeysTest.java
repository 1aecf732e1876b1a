package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.display.KeyAction;

class LevelKeysTest {

    private final LevelKeys keys = new LevelKeys();

    @ParameterizedTest
    @CsvSource({
        "REST,level: check rest",
        "LEVEL,level: check level",
        "CUT,level: cut 0.5",
        "DONE,level: done",
        "DROP,level: cancel",
        "REPAIRED,level: repaired"
    })
    void aKeyIsOneCommand(KeyAction action, String mark) {
        assertEquals(mark, keys.command(action).text());
    }

    @Test
    void theChecksThatAreMadeSeldomShareAKey() {
        List<String> marks = Stream.generate(() -> keys.command(KeyAction.CHECK).text())
                .limit(7)
                .toList();
        assertEquals(
                List.of(
                        "level: check loading",
                        "level: check effect",
                        "level: check skirts",
                        "level: check other-if",
                        "level: check harmonic",
                        "level: check image",
                        "level: check loading"),
                marks);
    }

    @Test
    void anotherKeyIsNoCommand() {
        assertThrows(IllegalArgumentException.class, () -> keys.command(KeyAction.QUIT));
    }
}
