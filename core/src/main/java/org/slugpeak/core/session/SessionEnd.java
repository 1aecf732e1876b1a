package org.slugpeak.core.session;

/**
 * Last record of a session that was closed properly. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param readings how many were taken
 * @param reason why it ended
 */
public record SessionEnd(long tNanos, long readings, EndReason reason) implements Frame {

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.sessionEnd(this);
    }
}
