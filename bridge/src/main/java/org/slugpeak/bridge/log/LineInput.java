package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** Cuts a stream into lines that end with LF; a line may be looked at until the next call. One thread at a time. */
final class LineInput implements Closeable {

    /** A longer line is no record. */
    private static final int LONGEST = 1 << 24;

    private final InputStream in;

    private byte[] bytes = new byte[1 << 16];
    private int filled;
    private int start;
    private int end;
    private int next;
    private long number;
    private boolean terminated;

    LineInput(InputStream in) {
        this.in = in;
    }

    /** Moves on; false at the end. */
    boolean next() throws IOException {
        int at = next;
        while (true) {
            while (at < filled && bytes[at] != '\n') {
                at++;
            }
            if (at < filled) {
                return cut(at, true);
            }
            int shift = next;
            if (!fill()) {
                return next < filled && cut(filled, false);
            }
            at -= shift;
        }
    }

    byte[] bytes() {
        return bytes;
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    /** Number of the present line, from 1. */
    long number() {
        return number;
    }

    /** Whether the present line has its line end; only the last may lack it. */
    boolean isTerminated() {
        return terminated;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    private boolean cut(int at, boolean withEnd) {
        start = next;
        end = at;
        next = withEnd ? at + 1 : at;
        terminated = withEnd;
        number++;
        return true;
    }

    private boolean fill() throws IOException {
        System.arraycopy(bytes, next, bytes, 0, filled - next);
        filled -= next;
        next = 0;
        if (filled == bytes.length) {
            if (filled >= LONGEST) {
                throw new IOException("line " + (number + 1) + " is longer than " + LONGEST + " bytes");
            }
            bytes = Arrays.copyOf(bytes, 2 * filled);
        }
        int count = in.read(bytes, filled, bytes.length - filled);
        filled += Math.max(0, count);
        return count > 0;
    }
}
