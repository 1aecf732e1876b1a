package org.slugpeak.core.session;

/**
 * The reading has stayed at the best for the dwell time: the adjuster can be recorded. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param value the smoothed reading, in its unit
 * @param lossDb what is missing to the best, dB; NaN for a zero
 */
public record Held(long tNanos, double value, double lossDb) implements Finding {

    @Override
    public Manner manner() {
        return Manner.VERDICT;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.held(this);
    }
}
