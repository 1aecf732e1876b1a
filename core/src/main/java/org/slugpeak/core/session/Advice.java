package org.slugpeak.core.session;

/**
 * Something the user should know that is no verdict. Readers that do not know the topic ignore it. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param topic lower case, hyphenated
 * @param text one line
 * @param amount the figure behind the text; NaN where there is none
 */
public record Advice(long tNanos, String topic, String text, double amount) implements SessionRecord {

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.advice(this);
    }
}
