package org.slugpeak.bridge.file;

import java.io.IOException;

/**
 * Cuts bytes into lines, which may end with LF, CR or both. A line may be looked at until the next call. A line that is
 * longer than {@link #LONGEST} says so and its bytes mean nothing. One thread at a time.
 */
final class Lines {

    /** Longest line in bytes. */
    static final int LONGEST = 4096;

    private static final int CAPACITY = 1 << 16;

    private final byte[] bytes = new byte[CAPACITY];

    private int next;
    private int filled;
    private int scanned;
    private int start;
    private int end;
    private long number;
    private boolean afterCarriageReturn;
    private boolean overlong;
    private boolean discarding;

    /** Fills up from a feed, once; gives what the feed gave. */
    int fill(ByteFeed feed, long waitNanos) throws IOException {
        makeRoom();
        int count = feed.read(bytes, filled, CAPACITY - filled, waitNanos);
        filled += Math.max(0, count);
        return count;
    }

    /** Moves on to the next whole line; false where more bytes are needed. */
    boolean next() {
        if (afterCarriageReturn && next < filled) {
            afterCarriageReturn = false;
            if (bytes[next] == '\n') {
                next++;
                scanned = next;
            }
        }
        int at = scanned;
        int limit = filled;
        while (at < limit && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        scanned = at;
        return at < limit && cut(at, 1);
    }

    /** Moves on to what stands behind the last line end, when no more will come; false if nothing does. */
    boolean last() {
        return (next < filled || discarding) && cut(filled, 0);
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

    boolean isOverlong() {
        return overlong;
    }

    private boolean cut(int at, int terminator) {
        start = discarding ? at : next;
        end = at;
        overlong = discarding || end - start > LONGEST;
        discarding = false;
        afterCarriageReturn = terminator > 0 && bytes[at] == '\r';
        next = at + terminator;
        scanned = next;
        number++;
        return true;
    }

    private void makeRoom() {
        if (scanned == filled && filled - next > LONGEST) {
            discarding = true;
            next = filled;
        }
        if (next > 0) {
            System.arraycopy(bytes, next, bytes, 0, filled - next);
            scanned -= next;
            filled -= next;
            next = 0;
            scanned = Math.max(0, Math.min(scanned, filled));
        }
    }
}
