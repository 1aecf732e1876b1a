package org.slugpeak.core.sheet;

/**
 * What the generator of a sheet can give. Immutable; any thread may use it.
 *
 * @param leastEmfVolts least level, volts EMF
 * @param mostEmfVolts greatest level, volts EMF
 * @param obeys whether it is set by the tool, and says when it stands
 */
public record InputReach(double leastEmfVolts, double mostEmfVolts, boolean obeys) {

    /** Of a service generator that a hand sets: a tenth of a microvolt to 0.1 V (common practice, no source). */
    public static final InputReach BY_HAND = new InputReach(1e-7, 0.1, false);
}
