package org.slugpeak.bridge.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.util.Optional;
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

    static TextStream open(InputStream file, int headBytes, String name) throws BadInput {
        try {
            byte[] first = file.readNBytes(headBytes);
            InputStream all = new SequenceInputStream(new ByteArrayInputStream(first), file);
            Optional<Charset> wide = NarrowedInput.wide(first);
            if (wide.isEmpty()) {
                return new TextStream(withoutMark(first), first.length < headBytes, all);
            }
            InputStream narrow = new NarrowedInput(all, wide.get());
            byte[] head = narrow.readNBytes(headBytes);
            InputStream whole = new SequenceInputStream(new ByteArrayInputStream(head), narrow);
            return new TextStream(withoutMark(head), head.length < headBytes, whole);
        } catch (IOException e) {
            throw new BadInput("cannot read " + name + " (" + e.getMessage() + ")", e);
        }
    }

    private static byte[] withoutMark(byte[] bytes) {
        boolean marked = bytes.length >= 3
                && (bytes[0] & 0xff) == 0xef
                && (bytes[1] & 0xff) == 0xbb
                && (bytes[2] & 0xff) == 0xbf;
        return marked ? java.util.Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }
}
