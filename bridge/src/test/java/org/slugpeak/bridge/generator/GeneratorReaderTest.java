package org.slugpeak.bridge.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.slugpeak.bridge.source.BadConfiguration;

/** Descriptions of generators, and the mistakes in them. */
class GeneratorReaderTest {

    private static final String LEAST = """
            name = "mine"
            [set-frequency]
            send = "F {number}"
            """;

    static List<String> shipped() {
        return Generators.SHIPPED;
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyOneThatComesAlongReadsAndIsCalledAsItsFile(String name) throws BadConfiguration {
        assertEquals(name, Generators.find(name).name());
    }

    @Test
    void littleMayBeSaid() throws BadConfiguration {
        GeneratorDescription description = GeneratorReader.read("mine.toml", LEAST);
        assertTrue(description.level().isEmpty() && description.output().isEmpty());
        assertEquals("F 455000", description.frequency().line(455e3));
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                Arguments.of(LEAST.replace(" {number}", ""), "'send' must hold {number}"),
                Arguments.of(LEAST + "[set-level]\nsend = \"A{number}\"\nunit = \"V\"", "'V' is not known for 'unit'"),
                Arguments.of(LEAST + "[set-level]\nsend = \"A{number}\"", "'unit' is missing"),
                Arguments.of(LEAST + "[output]\non = [\"1\"]", "'off' must be a list"),
                Arguments.of(LEAST + "[talk]\npatience-ms = 1", "patience-ms"),
                Arguments.of(LEAST + "[set-freqency]\nsend = \"x\"", "set-freqency"),
                Arguments.of(LEAST + "lowest = 3\nhighest = 2", "'highest' must be above 'lowest'"),
                Arguments.of(
                        LEAST + "ask-lowest = \"F? MIN\"", "'ask-lowest' and 'ask-highest' go together: give both"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void everyMistakeIsToldWithItsLine(String text, String expected) {
        String message = assertThrows(BadConfiguration.class, () -> GeneratorReader.read("mine.toml", text))
                .getMessage();
        assertTrue(message.contains(expected), message);
        assertTrue(message.contains("mine.toml:"), message);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 455000, 455000",
        "9, 0, 455000.4, 000455000",
        "3, 2, -7.125, -007.12",
        "0, 6, 0.0000014, 0.000001",
        "0, 1, -30, -30"
    })
    void numbersAreWrittenAsTheDescriptionWantsThem(int digits, int decimals, double number, String written) {
        NumberLines lines = new NumberLines(
                "{number}",
                digits,
                decimals,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Optional.empty(),
                Optional.empty());
        assertEquals(written, lines.line(number));
    }

    @ParameterizedTest
    @CsvSource({
        "{number}, +4.550000E+05, 455000",
        "F={number}, f= 455000 , 455000",
        "{number}*, -30.0 dBm, -30",
        "*{number}Hz, FREQ 455000Hz, 455000"
    })
    void numbersAreFoundInAnswers(String form, String answer, double number) {
        assertEquals(number, AnswerForm.of(form).number(answer).orElseThrow());
    }
}
