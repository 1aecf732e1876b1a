package org.slugpeak.bridge.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Streams that deliver their bytes in awkward pieces. */
final class Text {

    private Text() {}

    /** At most so many bytes a read. */
    static InputStream inPieces(byte[] bytes, int size) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] into, int at, int room) {
                return super.read(into, at, Math.min(room, size));
            }
        };
    }

    /** Breaks after its bytes, as a bad disk or a lost network folder does. */
    static InputStream thenBroken(byte[] bytes) {
        return new InputStream() {
            private int at;

            @Override
            public int read() throws IOException {
                if (at == bytes.length) {
                    throw new IOException("Input/output error");
                }
                return bytes[at++] & 0xff;
            }

            @Override
            public int read(byte[] into, int from, int room) throws IOException {
                into[from] = (byte) read();
                return 1;
            }
        };
    }
}
