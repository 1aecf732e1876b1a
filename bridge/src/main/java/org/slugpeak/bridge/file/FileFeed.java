package org.slugpeak.bridge.file;

import java.io.IOException;
import java.io.InputStream;

/** Bytes of a file: there at once, so that nothing is waited for. One thread at a time. */
final class FileFeed implements ByteFeed {

    private final InputStream in;

    FileFeed(InputStream in) {
        this.in = in;
    }

    @Override
    public int read(byte[] into, int at, int room, long waitNanos) throws IOException {
        return in.read(into, at, room);
    }

    /** A file does not arrive; its lines are timed by their own column or by a stated rate. */
    @Override
    public long arrivalNanos() {
        return 0;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
