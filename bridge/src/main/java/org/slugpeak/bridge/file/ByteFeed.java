package org.slugpeak.bridge.file;

import java.io.Closeable;
import java.io.IOException;

/** Where bytes come from. One thread at a time. */
interface ByteFeed extends Closeable {

    /** What {@link #read} gives when nothing will come any more. */
    int ENDED = -1;

    /**
     * Takes some bytes.
     *
     * @param into gets them
     * @param at index for the first of them
     * @param room how many at most; more than 0
     * @param waitNanos how long to wait while there is none
     * @return how many; 0 if none came in time; {@link #ENDED}
     * @throws IOException if they cannot be read
     */
    int read(byte[] into, int at, int room, long waitNanos) throws IOException;

    /**
     * When the bytes of the last read arrived.
     *
     * @return nanoseconds on a monotonic axis; never decreasing
     */
    long arrivalNanos();
}
