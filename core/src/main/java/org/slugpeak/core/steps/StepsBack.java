package org.slugpeak.core.steps;

import java.util.Locale;

/**
 * How far back what is sought lies, and how high it is there. Immutable; any thread may use it.
 *
 * @param steps from the last reading back to it, in steps of the hand; not negative
 * @param stepsError half the width of the interval that it lies in, in steps
 * @param top height of the maximum, depth of the minimum, as read; 0 for a zero
 * @param topError half the width of the interval that the top lies in, in the unit; NaN where the steps are too coarse to
 *     tell, and for a zero
 */
public record StepsBack(double steps, double stepsError, double top, double topError) {

    /** Topic of the advice that tells them again, when the hand has gone on after a pass. */
    public static final String TOPIC = "steps-back";

    /**
     * The steps and how well they are known, for the user.
     *
     * @return for example {@code 1.4 steps (+-0.2)}
     */
    public String words() {
        String format = stepsError < TENTHS_FROM ? "%.2f steps (+-%.2f)" : "%.1f steps (+-%.1f)";
        return String.format(Locale.ROOT, format, steps, stepsError);
    }

    /** An error that would read 0.0 needs another place. */
    private static final double TENTHS_FROM = 0.095;
}
