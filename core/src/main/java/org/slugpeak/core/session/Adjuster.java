package org.slugpeak.core.session;

/**
 * An adjuster is begun, done or skipped. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param name of the adjuster
 * @param action what happens with it
 * @param before level before, as read; NaN if not known
 * @param after level after, as read; NaN if not known
 * @param gainDb what was gained, dB; NaN if not known
 */
public record Adjuster(long tNanos, String name, Action action, double before, double after, double gainDb)
        implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.adjuster(this);
    }

    /** What happens with an adjuster. */
    public enum Action {
        /** Work on it starts; the best is forgotten. */
        BEGIN("begin"),
        /** It is set. */
        DONE("done"),
        /** It is left as it is. */
        SKIP("skip");

        private final String code;

        Action(String code) {
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
        public static Action ofCode(String code) {
            for (Action each : values()) {
                if (each.code.equals(code)) {
                    return each;
                }
            }
            throw new IllegalArgumentException("no action is called '" + code + "'");
        }
    }
}
