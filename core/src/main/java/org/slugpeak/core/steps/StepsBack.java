package org.slugpeak.core.steps;

/**
 * How far back what is sought lies, and how high it is there. Immutable; any thread may use it.
 *
 * @param steps from the last reading back to it, in steps of the hand; not negative
 * @param stepsError half the width of the interval that it lies in, in steps
 * @param top height of the maximum, depth of the minimum, as read, in the unit of the readings; 0 for a zero
 * @param topError half the width of the interval that the top lies in, in the unit; NaN where the steps are too coarse to
 *     tell, and for a zero
 */
public record StepsBack(double steps, double stepsError, double top, double topError) {}
