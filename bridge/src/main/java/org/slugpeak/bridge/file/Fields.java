package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a line into fields; blanks and one pair of quotes around a field, and empty fields at the end of the line, do not
 * count. One thread at a time.
 */
final class Fields {

    private static final int MOST = 64;

    private final int[] starts = new int[MOST];
    private final int[] ends = new int[MOST];

    private byte[] bytes = new byte[0];
    private int count;

    /** Cuts; gives how many fields there are, or more than that can be looked at. */
    int split(byte[] line, int from, int to, byte separator) {
        bytes = line;
        count = 0;
        int at = from;
        boolean quoted = false;
        for (int i = from; i < to; i++) {
            byte letter = line[i];
            if (letter == separator && !quoted) {
                add(at, i);
                at = i + 1;
            } else if (letter == '"') {
                quoted = !quoted;
            }
        }
        add(at, to);
        while (count > 1 && count <= MOST && starts[count - 1] == ends[count - 1]) {
            count--;
        }
        return count;
    }

    int start(int index) {
        return starts[index];
    }

    int end(int index) {
        return ends[index];
    }

    String text(int index) {
        return new String(bytes, starts[index], ends[index] - starts[index], StandardCharsets.UTF_8);
    }

    List<String> texts() {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < Math.min(count, MOST); i++) {
            all.add(text(i));
        }
        return all;
    }

    private void add(int from, int to) {
        if (count < MOST) {
            int start = from;
            int end = to;
            while (start < end && isBlank(bytes[start])) {
                start++;
            }
            while (start < end && isBlank(bytes[end - 1])) {
                end--;
            }
            boolean quoted = end - start >= 2 && bytes[start] == '"' && bytes[end - 1] == '"';
            starts[count] = quoted ? start + 1 : start;
            ends[count] = quoted ? end - 1 : end;
        }
        count++;
    }

    private static boolean isBlank(byte letter) {
        return letter == ' ' || letter == '\t';
    }
}
