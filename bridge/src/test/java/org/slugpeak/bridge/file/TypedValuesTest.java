package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.TypedWord;

/** One settled value a line, as a person types it. */
class TypedValuesTest {

    private static final CsvOptions STEPS = CsvOptions.defaults().withStepped(true);

    @Test
    void wordsMayStandInPlaceOfAValueWhereverTheyStand() throws BadInput {
        Heard heard = hear("u\n0.5\n U \nr\n0.7\nb\nk\nq\n", STEPS);
        assertEquals(List.of(0.5, 0.7), heard.values());
        assertEquals(
                List.of(
                        TypedWord.UNDO,
                        TypedWord.UNDO,
                        TypedWord.NEXT,
                        TypedWord.AGAIN,
                        TypedWord.SKIP,
                        TypedWord.QUIT),
                heard.typed);
        assertEquals(List.of(), heard.garbled);
    }

    @Test
    void aFirstLineThatIsNoNumberIsAMistakeAndNoHeader() throws BadInput {
        Heard heard = hear("volts\n0.5V\n0.5\n", STEPS);
        assertEquals(List.of("line 1: 'volts' is not a number", "line 2: '0.5V' is not a number"), heard.garbled);
        assertEquals(List.of(0.5), heard.values());
    }

    @Test
    void aDecimalCommaNeedsItsOption() throws BadInput {
        Heard pointed = hear("0.5\n1,25\n", STEPS);
        assertEquals(List.of(0.5), pointed.values());
        assertTrue(pointed.garbled.get(0).contains("--decimal-comma"), pointed.garbled.toString());
        assertEquals(
                List.of(1.25, -0.5, 0.0),
                hear("1,25\n-0,5\n0\n", STEPS.withDecimalComma(true)).values());
    }

    @Test
    void stepsAreASecondApartUnlessARateIsGiven() throws BadInput {
        assertEquals(List.of(0.0, 1.0, 2.0), hear("1\n2\n3\n", STEPS).seconds());
        assertEquals(
                List.of(0.0, 0.5),
                hear("1\n2\n", STEPS.withReadingsPerSecond(2)).seconds());
    }

    @Test
    void nothingButWordsIsNoSession() {
        BadInput refused = assertThrows(BadInput.class, () -> hear("u\n", STEPS));
        assertTrue(refused.getMessage().contains("holds no readings"), refused.getMessage());
    }

    @Test
    void withoutStepsAWordIsWhatItWas() throws BadInput {
        Heard heard = hear("0.5\nu\n", CsvOptions.defaults());
        assertEquals(List.of(), heard.typed);
        assertEquals(List.of("line 2: 'u' is not a number"), heard.garbled);
    }

    private static Heard hear(String text, CsvOptions options) throws BadInput {
        ByteArrayInputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        return Heard.all(CsvSource.standardInput(in, options, () -> 0));
    }
}
