package org.slugpeak.core.session;

/**
 * The reading has passed its maximum: turn back. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param best the best value, as read
 * @param bestAtNanos when it was reached, nanoseconds from the first reading
 * @param dropDb how far the reading has fallen since, dB; NaN for a zero
 */
public record Passed(long tNanos, double best, long bestAtNanos, double dropDb) implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.passed(this);
    }
}
