package org.slugpeak.bridge.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A line at the beginning of a text. Immutable but for the bytes, which nobody changes.
 *
 * @param number counted from 1
 * @param bytes without line end
 */
@SuppressWarnings("ArrayRecordComponent") // looked at, never compared
record SampleLine(long number, byte[] bytes) {

    /** The present line, copied. */
    static SampleLine of(Lines lines, int from) {
        return new SampleLine(lines.number(), Arrays.copyOfRange(lines.bytes(), from, lines.end()));
    }

    /** The whole lines at the beginning of a text. */
    static List<SampleLine> of(byte[] head, boolean complete) {
        List<SampleLine> all = new ArrayList<>();
        int from = 0;
        long number = 1;
        for (int i = 0; i < head.length; i++) {
            if (head[i] == '\n' || head[i] == '\r') {
                all.add(new SampleLine(number, Arrays.copyOfRange(head, from, i)));
                i += head[i] == '\r' && i + 1 < head.length && head[i + 1] == '\n' ? 1 : 0;
                from = i + 1;
                number++;
            }
        }
        if (complete && from < head.length) {
            all.add(new SampleLine(number, Arrays.copyOfRange(head, from, head.length)));
        }
        return all;
    }

    String text() {
        return Plain.text(bytes, 0, bytes.length).strip();
    }

    boolean isBlank() {
        return text().isEmpty();
    }

    boolean isComment() {
        return text().startsWith("#");
    }
}
