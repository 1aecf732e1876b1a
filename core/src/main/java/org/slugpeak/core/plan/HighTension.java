package org.slugpeak.core.plan;

/**
 * At which points of a set-up high tension may stand. Immutable; any thread may use it.
 *
 * @param atInjection where the generator is connected
 * @param atMeter where the meter is connected
 */
public record HighTension(boolean atInjection, boolean atMeter) {

    /** Where a plan says nothing: better a warning too many. */
    public static final HighTension POSSIBLE = new HighTension(true, true);
}
