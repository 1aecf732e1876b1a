package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineSplitterTest {

    private final LineSplitter splitter = new LineSplitter();
    private final List<String> lines = new ArrayList<>();
    private final LineSplitter.Taker taker = new LineSplitter.Taker() {
        @Override
        public void line(String text, boolean whole) {
            lines.add((whole ? "" : "part ") + text);
        }

        @Override
        public void garbled(Garble kind, String problem) {
            lines.add("garbled " + kind.code());
        }
    };

    @Test
    void anyLineEndDoesAndEmptyLinesAreNone() {
        take("a\nb\r\nc\r\r\n\nd\n");
        assertEquals(List.of("part a", "b", "c", "d"), lines);
    }

    @Test
    void halfALineAtTheEndIsNoLine() {
        take("a\n12");
        assertEquals(List.of("part a"), lines);
    }

    @Test
    void afterANewBeginningTheOldHalfIsForgotten() {
        take("\n12");
        splitter.begin();
        take("34\n56\n");
        assertEquals(List.of("part 34", "56"), lines);
    }

    @Test
    void aLineThatNeverEndsIsSaidOnceAndTheNextLineIsWhole() {
        take("\n" + "1".repeat(10 * LineSplitter.LONGEST_LINE) + "\n2\n");
        assertEquals(List.of("garbled torn", "2"), lines);
    }

    @Test
    void zerosAndHighBytesAreNoTextButAUnitIs() {
        take("\n1\u00002\n\u00f8\u00ff\u00c0\u00801\n1.5 \u00b5V\n2\n");
        assertEquals(List.of("garbled unreadable", "garbled unreadable", "part 1.5 \u00b5V", "2"), lines);
    }

    private void take(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        splitter.accept(bytes, bytes.length, taker);
    }
}
