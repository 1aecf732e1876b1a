package org.slugpeak.bridge.log;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Whole lines on their way out; its bytes can be looked at without a copy. One thread at a time. */
final class LineBuffer extends ByteArrayOutputStream {

    private static final int CAPACITY = 1 << 16;

    LineBuffer() {
        super(CAPACITY);
    }

    /** The bytes in it, from index 0 on; valid until the next write. */
    byte[] bytes() {
        return buf;
    }

    /** The same as {@link #size}, which takes a lock: it is asked for at every record. */
    int length() {
        return count;
    }

    void drainTo(OutputStream out) throws IOException {
        out.write(buf, 0, count);
        reset();
    }

    /** Where the last line ends that is whole within the first bytes; 0 if none is. */
    int lastLineEnd(int within) {
        int at = within;
        while (at > 0 && buf[at - 1] != '\n') {
            at--;
        }
        return at;
    }

    /** How many bytes the first lines have that are whole within a limit; all bytes if the first line alone is longer. */
    int someLines(int limit) {
        int within = lastLineEnd(Math.min(limit, count));
        return within > 0 ? within : count;
    }

    /** Takes the first bytes away. */
    void discard(int first) {
        System.arraycopy(buf, first, buf, 0, count - first);
        count -= first;
    }
}
