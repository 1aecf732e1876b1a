package org.slugpeak.core.plan;

/** By what an adjustment is judged. Immutable; any thread may use it. */
public enum Acceptance {
    /** The greatest output is the right setting. */
    MAXIMUM("maximum"),
    /** Equal readings on both skirts: for over-coupled and wide transformers, where the maximum misleads. */
    SKIRTS("skirts");

    private final String code;

    Acceptance(String code) {
        this.code = code;
    }

    /**
     * The word used in plans.
     *
     * @return lower case
     */
    public String code() {
        return code;
    }
}
