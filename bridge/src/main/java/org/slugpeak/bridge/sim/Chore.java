package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.SourceListener;

/** One thing that the operator of the simulated bench does. One thread at a time. */
interface Chore {

    /** Starts it, at the bench's present time. */
    void begin(Bench bench, SourceListener listener);

    /** Whether it is done; asked at every tick after it was begun. */
    boolean isDone(Bench bench);
}
