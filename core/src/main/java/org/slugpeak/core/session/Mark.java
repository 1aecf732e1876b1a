package org.slugpeak.core.session;

/**
 * The user's own note or key. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param text one line
 */
public record Mark(long tNanos, String text) implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.mark(this);
    }
}
