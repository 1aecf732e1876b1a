package org.slugpeak.core.session;

import org.slugpeak.core.word.Coded;

/**
 * Something happened to the link to the instrument. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param state what
 * @param detail one line; may be empty
 */
public record Link(long tNanos, State state, String detail) implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.link(this);
    }

    /** What a link can be. */
    public enum State implements Coded {
        /** The instrument has gone; reconnection is being tried. */
        LOST("lost"),
        /** The instrument is there but sends nothing; the last number is old. */
        STALE("stale"),
        /** Readings come again. */
        RESUMED("resumed");

        private final String code;

        State(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
