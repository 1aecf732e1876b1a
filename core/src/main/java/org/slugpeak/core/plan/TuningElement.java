package org.slugpeak.core.plan;

/** What moves when a set is tuned. Immutable; any thread may use it. */
public enum TuningElement {
    /** The plates of a gang capacitor. */
    CAPACITOR("capacitor"),
    /** Slugs on one carriage, as in car radios: the circuits are trimmed by capacitors, and tracked by coils. */
    PERMEABILITY("permeability");

    private final String code;

    TuningElement(String code) {
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
