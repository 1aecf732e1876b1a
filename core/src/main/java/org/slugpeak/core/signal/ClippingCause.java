package org.slugpeak.core.signal;

/** Why a level cannot be trusted for its size. Immutable; any thread may use it. */
public enum ClippingCause {
    /** Nothing clips. */
    NONE,
    /** Samples stand at full scale: the sound input is overdriven. */
    INPUT,
    /** The tone is distorted more and more while its level hardly grows: the set itself is overdriven. */
    SET
}
