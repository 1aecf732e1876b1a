package org.slugpeak.core.plan;

import java.util.OptionalDouble;

/**
 * What stands on the gain control line of a set; refused with an {@link IllegalArgumentException} beyond {@link #LOWEST_VOLTS}.
 * Immutable; any thread may use it.
 *
 * @param heldAtVolts by a bias supply, V; 0 where it is tied to the chassis; empty where nothing is clipped to it
 */
public record AvcLine(OptionalDouble heldAtVolts) {

    /** Pentodes with a remote cut-off are cut off by so much (valve data, from memory): nobody holds a line lower. */
    public static final double LOWEST_VOLTS = -50;

    /** Nothing is clipped to it. */
    public static final AvcLine FREE = new AvcLine(OptionalDouble.empty());

    public AvcLine {
        if (heldAtVolts.isPresent() && !(LOWEST_VOLTS <= heldAtVolts.getAsDouble() && heldAtVolts.getAsDouble() <= 0)) {
            throw new IllegalArgumentException("a gain control line is not held at " + heldAtVolts.getAsDouble());
        }
    }

    /**
     * Held by a supply, so that the gain stays as it is.
     *
     * @param volts V, from {@link #LOWEST_VOLTS} to 0
     * @return held
     */
    public static AvcLine heldAt(double volts) {
        return new AvcLine(OptionalDouble.of(volts));
    }
}
