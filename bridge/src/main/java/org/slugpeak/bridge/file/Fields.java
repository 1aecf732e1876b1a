package org.slugpeak.bridge.file;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a line into fields; blanks round a field, and empty fields at the end of the line, do not count. Lines with quotes are
 * left to {@link QuotedLine}; the others are cut where they lie, without a copy. One thread at a time.
 */
final class Fields {

    private static final int MOST = 64;

    private final int[] starts = new int[MOST];
    private final int[] ends = new int[MOST];

    private byte[] bytes = new byte[0];
    private int count;

    /** Cuts; gives how many fields there are, or more than that can be looked at; 0 where the quotes do not match. */
    int split(byte[] line, int from, int to, Separator separator) {
        count = 0;
        if (holdsQuote(line, from, to)) {
            splitQuoted(Plain.text(line, from, to), separator);
        } else {
            bytes = line;
            splitPlain(from, to, separator);
        }
        while (count > 1 && count <= MOST && starts[count - 1] == ends[count - 1]) {
            count--;
        }
        return count;
    }

    /** Where the fields lie that {@link #start} and {@link #end} speak of. */
    byte[] bytes() {
        return bytes;
    }

    int start(int index) {
        return starts[index];
    }

    int end(int index) {
        return ends[index];
    }

    String text(int index) {
        return Plain.text(bytes, starts[index], ends[index]);
    }

    List<String> texts() {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < Math.min(count, MOST); i++) {
            all.add(text(i));
        }
        return all;
    }

    private void splitPlain(int from, int to, Separator separator) {
        int at = from;
        for (int i = from; i < to; i++) {
            boolean cut = bytes[i] == separator.letter() || (separator.repeats() && isBlank(bytes[i]));
            if (cut && separator.repeats() && i == at) {
                at = i + 1;
            } else if (cut) {
                add(at, i);
                at = i + 1;
            }
        }
        if (at < to || !separator.repeats() || count == 0) {
            add(at, to);
        }
    }

    private void splitQuoted(String line, Separator separator) {
        Optional<List<String>> cells = QuotedLine.cells(line, separator);
        ByteArrayOutputStream copy = new ByteArrayOutputStream();
        List<Integer> cuts = new ArrayList<>(List.of(0));
        for (String cell : cells.orElse(List.of())) {
            copy.writeBytes(cell.getBytes(StandardCharsets.UTF_8));
            cuts.add(copy.size());
        }
        bytes = copy.toByteArray();
        for (int i = 1; i < cuts.size(); i++) {
            add(cuts.get(i - 1), cuts.get(i));
        }
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
            starts[count] = start;
            ends[count] = end;
        }
        count++;
    }

    private static boolean holdsQuote(byte[] line, int from, int to) {
        for (int i = from; i < to; i++) {
            if (line[i] == '"') {
                return true;
            }
        }
        return false;
    }

    private static boolean isBlank(byte letter) {
        return letter == ' ' || letter == '\t';
    }
}
