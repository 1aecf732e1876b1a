package org.slugpeak.bridge.source;

import java.util.Optional;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.EndReason;

/**
 * A way in: delivers readings and what happens to the link. One thread at a time calls it, and that thread is the caller's:
 * a source that needs a reader thread of its own hides it.
 */
public interface ReadingSource extends AutoCloseable {

    /** How one pass of a source ended. */
    enum Progress {
        /** Something was delivered, and more may be ready at once. */
        MORE,
        /** Nothing more is ready now. */
        IDLE,
        /** The source has ended for good: end of file, end of the simulation. */
        ENDED
    }

    /**
     * What is measured. It may be asked as soon as the source is there.
     *
     * @return quantity and unit; {@link Measurand#UNKNOWN} where the source does not say
     */
    Measurand measurand();

    /**
     * What answers at the other end.
     *
     * @return what is known of it by now
     */
    SourceDescription description();

    /**
     * How what comes is understood, so that a user can see whether that is right.
     *
     * @return empty where there is nothing to be said
     */
    default Optional<Understanding> understanding() {
        return Optional.empty();
    }

    /**
     * One pass: delivers what is there, waiting at most the given time for something to come. A source that can wait for
     * ever (standard input) may wait longer only when nobody asked it to stop.
     *
     * @param waitNanos how long it may wait when nothing is there; 0 or more
     * @param listener hears what came, in order, in the calling thread
     * @return whether to come again
     * @throws BridgeException where the work cannot go on and the user must do something
     */
    Progress poll(long waitNanos, SourceListener listener) throws BridgeException;

    /**
     * Why it ended, for the {@code end} record, once {@link #poll} has said that it has.
     *
     * @return what a recorded session says of it, or that the source has ended
     */
    default EndReason endReason() {
        return EndReason.Known.SOURCE_ENDED;
    }

    /** Lets go of the instrument or file. Safe to call twice. */
    @Override
    void close();
}
