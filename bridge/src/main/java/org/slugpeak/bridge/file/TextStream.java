package org.slugpeak.bridge.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.commons.io.input.ReaderInputStream;
import org.slugpeak.bridge.source.BadInput;

/**
 * The bytes of a text file, in UTF-8 where they were UTF-16, without their mark, whose beginning may be looked at first.
 *
 * @param head the beginning
 * @param isShort whether it is all
 * @param whole all of it
 */
@SuppressWarnings("ArrayRecordComponent") // looked at, never compared
record TextStream(byte[] head, boolean isShort, InputStream whole) {

    /** So many bytes of UTF-16 with a zero in every other place are no accident. */
    private static final int ENOUGH = 8;

    static TextStream open(InputStream file, int headBytes, String name) throws BadInput {
        try {
            byte[] first = file.readNBytes(headBytes);
            InputStream all = new SequenceInputStream(new ByteArrayInputStream(first), file);
            Optional<Charset> wide = wide(first);
            if (wide.isEmpty()) {
                return new TextStream(withoutMark(first), first.length < headBytes, all);
            }
            InputStream narrow = ReaderInputStream.builder()
                    .setReader(new InputStreamReader(all, wide.get()))
                    .setCharset(StandardCharsets.UTF_8)
                    .get();
            byte[] head = narrow.readNBytes(headBytes);
            InputStream whole = new SequenceInputStream(new ByteArrayInputStream(head), narrow);
            return new TextStream(withoutMark(head), head.length < headBytes, whole);
        } catch (IOException e) {
            throw new BadInput("cannot read " + name + " (" + e.getMessage() + ")", e);
        }
    }

    /** UTF-16 by its mark, or by the zero bytes of its blanks and digits. */
    private static Optional<Charset> wide(byte[] bytes) {
        int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xff) << 8) | (bytes[1] & 0xff);
        if (mark == 0xfffe || mark == 0xfeff) {
            return Optional.of(mark == 0xfffe ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE);
        }
        int even = zeros(bytes, 0);
        int odd = zeros(bytes, 1);
        if (bytes.length < 2 * ENOUGH || Math.max(even, odd) < bytes.length * 2 / 5 || Math.min(even, odd) > 0) {
            return Optional.empty();
        }
        return Optional.of(odd > even ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE);
    }

    private static int zeros(byte[] bytes, int from) {
        int count = 0;
        for (int i = from; i < bytes.length; i += 2) {
            count += bytes[i] == 0 ? 1 : 0;
        }
        return count;
    }

    private static byte[] withoutMark(byte[] bytes) {
        boolean marked = bytes.length >= 3
                && (bytes[0] & 0xff) == 0xef
                && (bytes[1] & 0xff) == 0xbb
                && (bytes[2] & 0xff) == 0xbf;
        return marked ? java.util.Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }
}
