package org.slugpeak.core.session;

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
    public enum State {
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

        /**
         * The word used in records.
         *
         * @return lower case, hyphenated
         */
        public String code() {
            return code;
        }

        /**
         * Finds the constant with a given code.
         *
         * @param code as written in records
         * @return the constant
         * @throws IllegalArgumentException if there is none
         */
        public static State ofCode(String code) {
            for (State each : values()) {
                if (each.code.equals(code)) {
                    return each;
                }
            }
            throw new IllegalArgumentException("no state is called '" + code + "'");
        }
    }
}
