package org.slugpeak.bridge.log;

import java.util.function.Function;
import org.slugpeak.core.session.SessionEnd;

/** How a session log ends. Immutable; any thread may use it. */
public sealed interface LogEnding {

    /**
     * One case for each kind.
     *
     * @param <R> what the cases give back
     * @param complete for a session that was closed properly
     * @param truncated for one that was not
     * @return what the one of them gave
     */
    <R> R match(Function<Complete, R> complete, Function<Truncated, R> truncated);

    /**
     * The session was closed properly.
     *
     * @param end the last record
     */
    record Complete(SessionEnd end) implements LogEnding {

        @Override
        public <R> R match(Function<Complete, R> complete, Function<Truncated, R> truncated) {
            return complete.apply(this);
        }
    }

    /**
     * The program was killed, or the power was cut, before the session was closed.
     *
     * @param line number of the last line, from 1
     * @param text what there is of the last line if it is torn; empty if it is whole
     */
    record Truncated(long line, String text) implements LogEnding {

        @Override
        public <R> R match(Function<Complete, R> complete, Function<Truncated, R> truncated) {
            return truncated.apply(this);
        }
    }
}
