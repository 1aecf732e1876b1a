package org.slugpeak.cli.outlet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.slugpeak.bridge.text.SafeText;

/**
 * Lines of text on their way to a person: whatever wrote them, nothing gets through that a terminal would obey. A character may
 * come in pieces, in UTF-8, and goes out whole in the encoding of whoever shows it. One thread at a time.
 */
final class SafeTextOutput extends OutputStream {

    private static final int LAST_PLAIN = 0x7E;
    private static final int CONTINUES_MASK = 0xC0;
    private static final int CONTINUES = 0x80;
    private static final int LONGEST_CHARACTER = 4;

    private final OutputStream out;
    private final Charset encoding;
    private byte[] piece = new byte[0];

    SafeTextOutput(OutputStream out) {
        this(out, StandardCharsets.UTF_8);
    }

    /** For who shows another encoding, of which ASCII must be a part; what it lacks becomes a question mark. */
    SafeTextOutput(OutputStream out, Charset encoding) {
        this.out = out;
        this.encoding = encoding;
    }

    @Override
    public void write(int each) throws IOException {
        write(new byte[] {(byte) each}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        if (piece.length == 0 && isPlain(bytes, from, from + count)) {
            out.write(bytes, from, count);
            return;
        }
        byte[] all = Arrays.copyOf(piece, piece.length + count);
        System.arraycopy(bytes, from, all, piece.length, count);
        int whole = wholeCharacters(all);
        piece = Arrays.copyOfRange(all, whole, all.length);
        String text = new String(all, 0, whole, StandardCharsets.UTF_8);
        out.write(safe(text).getBytes(encoding));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }

    /** Some systems end a line with two characters. */
    private static String safe(String text) {
        String end = System.lineSeparator();
        return SafeText.lines(text.replace(end, "\n")).replace("\n", end);
    }

    private static boolean isPlain(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            boolean plain = (bytes[i] >= ' ' && bytes[i] <= LAST_PLAIN) || bytes[i] == '\n' || bytes[i] == '\t';
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    /** How many bytes there are before a character whose end has not come yet (RFC 3629 section 3). */
    private static int wholeCharacters(byte[] bytes) {
        int start = bytes.length;
        do {
            start--;
        } while (start > 0 && bytes.length - start < LONGEST_CHARACTER && (bytes[start] & CONTINUES_MASK) == CONTINUES);
        return start >= 0 && bytes.length - start < length(bytes[start]) ? start : bytes.length;
    }

    private static int length(byte first) {
        int ones = Integer.numberOfLeadingZeros(~(first << 24));
        return ones >= 2 && ones <= LONGEST_CHARACTER ? ones : 1;
    }
}
