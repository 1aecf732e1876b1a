package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.session.SessionRecord;

/** One thing that the operator of the simulated bench does. One thread at a time. */
interface Chore {

    /** Starts it, at the bench's present time. */
    void begin(Bench bench, SourceListener listener);

    /** Goes on with it, once a tick; whether it is done. */
    boolean step(Bench bench, SourceListener listener);

    /** Hears a record of the session. */
    default void hear(SessionRecord record, Bench bench) {}
}
