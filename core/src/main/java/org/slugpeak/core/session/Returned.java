package org.slugpeak.core.session;

/**
 * After a pass the reading is back at the best: stop turning. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param value the smoothed reading, in its unit
 * @param lossDb what is missing to the best, dB; NaN for a zero
 */
public record Returned(long tNanos, double value, double lossDb) implements Finding {

    @Override
    public Manner manner() {
        return Manner.VERDICT;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.returned(this);
    }
}
