package org.slugpeak.core.reading;

/**
 * One reading of the meter; a value that is not finite is refused with an {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param tNanos when it was read, in nanoseconds on the source's one monotonic axis; the origin has no meaning
 * @param value what was read, in the unit of the {@link Measurand}; finite; 0 and meaningless where the condition has no
 *     value
 * @param condition how far it can be believed
 */
public record Reading(long tNanos, double value, Condition condition) {

    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading's value must be finite, not " + value);
        }
        if (!condition.hasValue()) {
            value = 0;
        }
    }

    /**
     * A plain, trusted reading.
     *
     * @param tNanos time in nanoseconds
     * @param value in the unit of the measurand; finite
     * @return the reading
     */
    public static Reading of(long tNanos, double value) {
        return new Reading(tNanos, value, Condition.OK);
    }

    /**
     * A reading that carries no number.
     *
     * @param tNanos time in nanoseconds
     * @param condition one without a value
     * @return the reading
     * @throws IllegalArgumentException if that condition carries a value
     */
    public static Reading without(long tNanos, Condition condition) {
        if (condition.hasValue()) {
            throw new IllegalArgumentException(condition + " carries a value");
        }
        return new Reading(tNanos, 0, condition);
    }
}
