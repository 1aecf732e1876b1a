package org.slugpeak.bridge.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadConfiguration;

final class NestingTest {

    private static final String DEEP = "[".repeat(100);

    @Test
    void bracketsDeeperThanSixtyFourAreFoundInTheirLine() {
        assertEquals(OptionalInt.of(3), Nesting.lineTooDeep("a = 1\n\nb = " + DEEP));
        assertEquals(OptionalInt.of(1), Nesting.lineTooDeep("a = " + "{a = ".repeat(100)));
        assertEquals(OptionalInt.empty(), Nesting.lineTooDeep("a = " + "[".repeat(64) + "]".repeat(64)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"a = \"%s\"", "a = '%s'", "a = \"\"\"\n%s\n\"\"\"", "a = '''\n%s\n'''", "# %s", "a = \"\\\"%s\""
            })
    void bracketsWithinStringsAndCommentsDoNotCount(String around) {
        assertEquals(OptionalInt.empty(), Nesting.lineTooDeep(String.format(around, DEEP) + "\nb = [1]\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a = \"%s", "a = '%s", "a = \"\"\"%s", "a = \\", "\"", "'''"})
    void aStringThatNeverEndsIsNoTrouble(String around) {
        assertEquals(OptionalInt.empty(), Nesting.lineTooDeep(String.format(around, DEEP)));
    }

    @Test
    void tablesOneAfterTheOtherAreNotDeep() {
        assertEquals(OptionalInt.empty(), Nesting.lineTooDeep("[[stage]]\n".repeat(1000)));
    }

    @Test
    void theFileIsRefusedBeforeTheParserSeesIt() {
        String said = assertThrows(
                        BadConfiguration.class, () -> TomlFile.read("p.toml", "plan", "a = " + DEEP, top -> top))
                .getMessage();
        assertTrue(said.startsWith("p.toml:1: brackets within brackets"), said);
    }
}
