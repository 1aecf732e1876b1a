package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;

/**
 * Where the lines of a log go. One thread at a time, except for {@link #force}, which another thread may call at any time
 * before {@link #close}.
 */
interface Storage extends Closeable {

    /**
     * Writes at the end, with one call of the system where that takes all. When it throws, {@link #length} tells how far it
     * came.
     */
    void write(byte[] bytes, int from, int count) throws IOException;

    /** How many bytes there are. */
    long length() throws IOException;

    /** Cuts the end off. */
    void truncate(long length) throws IOException;

    /** Returns when all that was written before is on the disk. */
    void force() throws IOException;

    /** Lets go of it; what holds nothing is taken away, or the next try would find the name taken. */
    @Override
    void close() throws IOException;
}
