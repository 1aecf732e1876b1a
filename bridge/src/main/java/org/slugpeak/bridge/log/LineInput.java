package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** Cuts a stream into lines that end with LF; a line may be looked at until the next call. One thread at a time. */
final class LineInput implements Closeable {

    /** A longer line is no record; the longest that is written has a few kilobytes. */
    static final int LONGEST = 1 << 20;

    private final InputStream in;

    private byte[] bytes = new byte[1 << 16];
    private int filled;
    private int start;
    private int end;
    private int next;
    private long number;
    private boolean terminated;
    private boolean overlong;

    LineInput(InputStream in) {
        this.in = in;
    }

    /** Moves on; false at the end. */
    boolean next() throws IOException {
        overlong = false;
        int at = next;
        while (true) {
            while (at < filled && bytes[at] != '\n') {
                at++;
            }
            if (at < filled) {
                return cut(at, true);
            }
            if (at - next >= LONGEST) {
                overlong = true;
                next = at;
            }
            int shift = next;
            if (!fill()) {
                return (next < filled || overlong) && cut(filled, false);
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

    /** Whether the present line is too long to be a record; then only its end can be looked at. */
    boolean isOverlong() {
        return overlong;
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
            bytes = Arrays.copyOf(bytes, 2 * filled);
        }
        int count = in.read(bytes, filled, bytes.length - filled);
        filled += Math.max(0, count);
        return count > 0;
    }
}
