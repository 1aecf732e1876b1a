package org.slugpeak.core.session;

/**
 * Too little signal over noise to find a peak well. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param snrDb signal over noise, dB
 * @param advice what to do, one line
 */
public record Weak(long tNanos, double snrDb, String advice) implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.weak(this);
    }
}
