package org.slugpeak.core.plan;

/** What the end of a round means. Immutable; any thread may use it. */
public enum RoundVerdict {
    /** The round changed less than the rule says. */
    CONVERGED,
    /** It is gone through once more. */
    AGAIN,
    /** Once more, but it gains as a single circuit would not: an over-coupled transformer may be the cause. */
    CREEPING,
    /** It was the last round allowed, and it still gained. */
    STILL_GAINING;

    /**
     * Whether the round is gone through once more.
     *
     * @return false where the stage is over
     */
    public boolean goesOn() {
        return this == AGAIN || this == CREEPING;
    }
}
