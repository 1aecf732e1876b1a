package org.slugpeak.core.session;

/**
 * Two maxima were seen in one travel. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param first value at the first maximum, in the unit of the readings
 * @param second value at the second
 * @param dipDb depth of the dip between them below the lower one, dB
 */
public record TwoPeaks(long tNanos, double first, double second, double dipDb) implements Finding {

    @Override
    public Manner manner() {
        return Manner.VERDICT;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.twoPeaks(this);
    }
}
