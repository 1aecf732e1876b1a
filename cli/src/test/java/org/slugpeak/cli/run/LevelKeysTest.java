package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.core.level.LevelCommand;

class LevelKeysTest {

    private final LevelKeys keys = new LevelKeys();

    @ParameterizedTest
    @CsvSource({
        "REST,CHECK,rest",
        "LEVEL,CHECK,level",
        "CUT,CUT,0.5",
        "DONE,DONE,''",
        "DROP,CANCEL,''",
        "REPAIRED,REPAIRED,''"
    })
    void aKeyIsOneCommand(KeyAction action, LevelCommand.Verb verb, String detail) {
        assertEquals(new LevelCommand(verb, detail), keys.command(action));
    }

    @Test
    void theChecksThatAreMadeSeldomShareAKey() {
        List<String> checks = Stream.generate(
                        () -> keys.command(KeyAction.CHECK).detail())
                .limit(8)
                .toList();
        assertEquals(
                List.of("loading", "effect", "skirts", "other-if", "harmonic", "image", "detector-law", "loading"),
                checks);
    }

    @Test
    void anotherKeyIsNoCommand() {
        assertThrows(IllegalArgumentException.class, () -> keys.command(KeyAction.QUIT));
    }
}
