package org.slugpeak.core.session;

/**
 * Too little signal over noise to find a peak well. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param snrDb signal over noise, dB
 */
public record Weak(long tNanos, double snrDb) implements Caution {

    @Override
    public Manner manner() {
        return Manner.ALARM;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.weak(this);
    }
}
