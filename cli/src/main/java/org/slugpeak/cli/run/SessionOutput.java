package org.slugpeak.cli.run;

import java.util.List;
import org.slugpeak.core.session.RecordSink;

/**
 * Shows or keeps the records of a session: log, JSON lines, screen, sound. Called in the one thread that runs the session.
 */
public interface SessionOutput extends RecordSink, AutoCloseable {

    /** Called before the session waits for its source: whatever is held back must go out now. */
    default void flush() {}

    /**
     * Whether it cannot hold back much more, so that all outputs must be flushed, in their order: a log comes first.
     *
     * @return true until it is flushed
     */
    default boolean isFull() {
        return false;
    }

    /**
     * Called after each pass of the source: passes on what the user has asked for by key.
     *
     * @param control of the session
     */
    default void serve(SessionControl control) {}

    /**
     * Whether all is kept that was to be kept here; asked when it is closed.
     *
     * @return false where records were lost, which has been said
     */
    default boolean isWhole() {
        return true;
    }

    /** Called once, after the last record. */
    @Override
    default void close() {}

    /**
     * Closes each, whatever happens to those before it.
     *
     * @param outputs in this order
     */
    static void closeAll(List<SessionOutput> outputs) {
        if (!outputs.isEmpty()) {
            try {
                outputs.get(0).close();
            } finally {
                closeAll(outputs.subList(1, outputs.size()));
            }
        }
    }
}
