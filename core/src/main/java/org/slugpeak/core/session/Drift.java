package org.slugpeak.core.session;

/**
 * The reading moves though nothing is turned. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param perMinute speed, in the unit, per minute
 * @param unit of the speed
 */
public record Drift(long tNanos, double perMinute, String unit) implements Caution {

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.drift(this);
    }
}
