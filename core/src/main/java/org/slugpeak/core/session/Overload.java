package org.slugpeak.core.session;

import org.slugpeak.core.word.Coded;

/**
 * The reading cannot be trusted as a maximum. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param cause what was seen
 * @param slope of reading over generator, in decibels of one over decibels of the other, where it has flattened; else NaN
 */
public record Overload(long tNanos, Cause cause, double slope) implements Caution {

    @Override
    public Manner manner() {
        return Manner.ALARM;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.overload(this);
    }

    /** What an overload was seen by. */
    public enum Cause implements Coded {
        /** The meter says so. */
        OVER_RANGE("over-range"),
        /** The converter stands at the end of its scale. */
        FULL_SCALE("full-scale"),
        /** The audio is clipped. */
        CLIPPING("clipping"),
        /** The reading no longer follows the generator. */
        FLATTENING("flattening");

        private final String code;

        Cause(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
