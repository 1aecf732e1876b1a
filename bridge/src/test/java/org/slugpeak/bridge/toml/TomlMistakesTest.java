package org.slugpeak.bridge.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.source.BadConfiguration;

/** What is written against the rules of TOML is said in the words of one who writes a plan. */
class TomlMistakesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "name = set|my.toml:1: after the '=' comes text in quotes, a number, true, false or a list in brackets, not 's'",
                "name == 3|my.toml:1: after the '=' comes text in quotes, a number, true, false or a list in brackets, not '='",
                "name = |my.toml:1: after the '=' comes text in quotes, a number, true, false or a list in brackets, not end of line",
                "name = \"set|my.toml:1: the quotes are not closed: \" is expected at the end of the text",
                "[steps|my.toml:1: the bracket is not closed: ] is expected",
            })
    void isSaidWithItsLineAndWhatWasExpected(String text, String said) {
        assertMistake(said, text + "\n");
    }

    @Test
    void whatStandsTwiceIsSaidWithBothLines() {
        assertMistake("my.toml:2: 'name' stands in line 1 already: expected once", "name = \"a\"\nname = \"b\"\n");
    }

    private static void assertMistake(String said, String text) {
        BadConfiguration mistake = assertThrows(
                BadConfiguration.class, () -> TomlFile.read("my.toml", "plan", text, top -> top.requiredText("name")));
        assertEquals(said, mistake.getMessage());
    }
}
