package org.slugpeak.bridge.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SafeTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "12 \u00b5V, 3 \u03a9",
                "\u4e2d\u6587",
                "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645",
                "\ud83d\udd0a"
            })
    void whatAPersonCanReadStays(String text) {
        assertSame(text, SafeText.line(text));
    }

    /** C0, DEL and C1 of ECMA-48; the directional formatting characters of Unicode Standard Annex 9, table 2. */
    @Test
    void whateverIsObeyedInsteadOfShownIsReplaced() {
        IntStream controls = IntStream.concat(IntStream.range(0, 0x20), IntStream.range(0x7F, 0xA0));
        IntStream marks = IntStream.of(
                0x061C, 0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0x2028,
                0x2029, 0xFEFF);
        IntStream.concat(controls, marks)
                .forEach(each -> assertEquals(
                        "a?b", SafeText.line("a" + Character.toString(each) + "b"), Integer.toHexString(each)));
    }

    @Test
    void halfACharacterIsReplaced() {
        assertEquals("a?b", SafeText.line("a\ud800b"));
    }

    @Test
    void severalLinesKeepTheirEndsAndTabsOnly() {
        assertEquals("a\tb\nc?d?e", SafeText.lines("a\tb\nc\rd\u001be"));
    }

    @Test
    void aLongListIsCutAndCounted() {
        List<String> many = IntStream.range(0, 500).mapToObj(Integer::toString).toList();
        assertTrue(Listing.of(many, ", ").endsWith("18, 19, and 480 more"));
        assertEquals("0, 1", Listing.of(many.subList(0, 2), ", "));
    }
}
