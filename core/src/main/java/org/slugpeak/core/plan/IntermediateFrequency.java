package org.slugpeak.core.plan;

/**
 * An intermediate frequency of a set; refused with an {@link IllegalArgumentException} unless positive and finite. Immutable; any thread may
 * use it.
 *
 * @param name by which stages call it, for example {@code FM} or {@code second}; empty where the plan gives it none
 * @param hz Hz, positive
 */
public record IntermediateFrequency(String name, double hz) {

    public IntermediateFrequency {
        if (!(hz > 0) || !Double.isFinite(hz)) {
            throw new IllegalArgumentException("an intermediate frequency must be positive and finite, not " + hz);
        }
    }

    /**
     * One that needs no name.
     *
     * @param hz Hz, positive
     * @return without a name
     */
    public static IntermediateFrequency of(double hz) {
        return new IntermediateFrequency("", hz);
    }
}
