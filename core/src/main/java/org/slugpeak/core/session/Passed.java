package org.slugpeak.core.session;

import java.util.Optional;
import org.slugpeak.core.steps.StepsBack;

/**
 * The reading has passed its maximum: turn back. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param best the best value, as read, in the unit of the readings
 * @param bestAtNanos when it was reached, nanoseconds from the first reading
 * @param dropDb how far the reading has fallen since, dB; NaN for a zero
 * @param back how many steps back it lies; empty where readings follow a turning hand
 */
public record Passed(long tNanos, double best, long bestAtNanos, double dropDb, Optional<StepsBack> back)
        implements Finding {

    /**
     * A pass among readings that follow a turning hand.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param best the best value, as read, in the unit of the readings
     * @param bestAtNanos when it was reached, nanoseconds from the first reading
     * @param dropDb how far the reading has fallen since, dB; NaN for a zero
     */
    public Passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        this(tNanos, best, bestAtNanos, dropDb, Optional.empty());
    }

    @Override
    public Manner manner() {
        return Manner.VERDICT;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.passed(this);
    }
}
