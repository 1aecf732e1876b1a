package org.slugpeak.core.signal;

/** Why a level cannot be trusted for its size. Immutable; any thread may use it. */
public enum ClippingCause {
    /** Nothing clips. */
    NONE(""),
    /** Samples stand at full scale: the sound input is overdriven. */
    INPUT("the sound input clips: turn its level down, or divide the voltage"),
    /** The tone is distorted more and more while its level hardly grows: the set itself is overdriven. */
    SET("the set's own audio stage clips: turn its volume or the generator down");

    private final String advice;

    ClippingCause(String advice) {
        this.advice = advice;
    }

    /**
     * What is wrong and what to do.
     *
     * @return one line; empty for {@link #NONE}
     */
    public String advice() {
        return advice;
    }
}
