package org.slugpeak.bridge.log;

import org.slugpeak.core.session.SessionEnd;

/** How a session log ends. Immutable; any thread may use it. */
public sealed interface LogEnding {

    /**
     * What the user should know of it.
     *
     * @return one line; empty if there is nothing
     */
    String message();

    /**
     * The session was closed properly.
     *
     * @param end the last record
     */
    record Complete(SessionEnd end) implements LogEnding {

        /** Nothing is to be said. */
        @Override
        public String message() {
            return "";
        }
    }

    /**
     * The program was killed, or the power was cut, before the session was closed.
     *
     * @param line number of the last line, from 1
     * @param text what there is of the last line if it is torn; empty if it is whole
     */
    record Truncated(long line, String text) implements LogEnding {

        private static final int EXCERPT = 40;

        /** Says where the record stops. */
        @Override
        public String message() {
            String cut = text.length() > EXCERPT ? text.substring(0, EXCERPT) + "..." : text;
            String where = text.isEmpty()
                    ? "the log stops after line " + line + " without an end record"
                    : "the log stops within line " + line + " (" + cut + ")";
            return where + ": the session was not closed; every whole line before that was read";
        }
    }
}
