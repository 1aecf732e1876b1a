package org.slugpeak.bridge.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** UTF-16 as UTF-8. What has come is given at once, so that it suits streams that go on for hours. One thread at a time. */
final class NarrowedInput extends InputStream {

    /** So many characters with a zero in every other byte are no accident. */
    private static final int ENOUGH = 8;

    private static final int CHARACTERS = 1024;

    private final Reader characters;
    private final char[] block = new char[CHARACTERS];
    private byte[] ready = new byte[0];
    private int given;

    NarrowedInput(InputStream wide, Charset charset) {
        this.characters = new InputStreamReader(wide, charset);
    }

    /** Waits for the first bytes of a stream, and narrows it where they are UTF-16. */
    static InputStream ofLive(InputStream in) throws IOException {
        byte[] first = new byte[2 * CHARACTERS];
        int count = 0;
        int more = in.read(first);
        while (more > 0) {
            count += more;
            more = mayBecomeWide(first, count) ? in.read(first, count, first.length - count) : 0;
        }
        byte[] head = Arrays.copyOf(first, count);
        InputStream all = new SequenceInputStream(new ByteArrayInputStream(head), in);
        return wide(head)
                .<InputStream>map(charset -> new NarrowedInput(all, charset))
                .orElse(all);
    }

    /** UTF-16 by its mark, or by the zero bytes of its blanks and digits. */
    static Optional<Charset> wide(byte[] bytes) {
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

    /** Half a mark, or zeros in so short a piece that they may be an accident; no text without them is kept waiting. */
    private static boolean mayBecomeWide(byte[] bytes, int count) {
        boolean halfMark = count == 1 && (bytes[0] == (byte) 0xfe || bytes[0] == (byte) 0xff);
        byte[] head = Arrays.copyOf(bytes, count);
        return halfMark || (count < 2 * ENOUGH && wide(head).isEmpty() && zeros(head, 0) + zeros(head, 1) > 0);
    }

    private static int zeros(byte[] bytes, int from) {
        int count = 0;
        for (int i = from; i < bytes.length; i += 2) {
            count += bytes[i] == 0 ? 1 : 0;
        }
        return count;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int at, int room) throws IOException {
        if (given == ready.length) {
            int count = characters.read(block);
            if (count < 0) {
                return -1;
            }
            ready = new String(block, 0, count).getBytes(StandardCharsets.UTF_8);
            given = 0;
        }
        int count = Math.min(room, ready.length - given);
        System.arraycopy(ready, given, into, at, count);
        given += count;
        return count;
    }

    @Override
    public void close() throws IOException {
        characters.close();
    }
}
