package org.slugpeak.core.session;

import org.slugpeak.core.peak.NoPeakReason;

/**
 * A travel ended without a maximum. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param reason why
 */
public record NoPeak(long tNanos, NoPeakReason reason) implements Finding {

    @Override
    public Manner manner() {
        return Manner.VERDICT;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.noPeak(this);
    }
}
