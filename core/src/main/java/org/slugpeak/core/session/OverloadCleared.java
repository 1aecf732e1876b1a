package org.slugpeak.core.session;

/**
 * The overload has gone. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 */
public record OverloadCleared(long tNanos) implements Caution {

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.overloadCleared(this);
    }
}
