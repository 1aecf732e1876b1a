package org.slugpeak.core.peak;

/** Why a travel ended without a maximum. Immutable; any thread may use it. */
public enum NoPeakReason {
    /** The reading did not move beyond its noise although it was given time. */
    FLAT("flat"),
    /** The reading rose and then stood still without falling: the adjuster is at the end of its travel. */
    END_OF_TRAVEL("end-of-travel"),
    /** The direction was reversed before a maximum was crossed: the pass is taken back. */
    REVERSED("reversed"),
    /** A null was reached but the sign did not change: not the zero of a discriminator. */
    DEAD_ZERO("dead-zero");

    private final String code;

    NoPeakReason(String code) {
        this.code = code;
    }

    /**
     * The word used in records.
     *
     * @return lower case, hyphenated
     */
    public String code() {
        return code;
    }
}
