package org.slugpeak.bridge.log;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;

/** Whole lines on their way out; its bytes can be looked at without a copy. One thread at a time. */
final class LineBuffer extends ByteArrayOutputStream {

    private static final int CAPACITY = 1 << 16;

    LineBuffer() {
        super(CAPACITY);
    }

    /** Everything in it; valid until the next write. */
    ByteBuffer content() {
        return ByteBuffer.wrap(buf, 0, count);
    }

    void drainTo(OutputStream out) throws IOException {
        out.write(buf, 0, count);
        reset();
    }
}
