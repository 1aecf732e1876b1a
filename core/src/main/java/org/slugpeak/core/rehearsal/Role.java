package org.slugpeak.core.rehearsal;

/** What an adjuster is in the set, as its step tells. Immutable; any thread may use it. */
public enum Role {
    /** A winding of an intermediate-frequency transformer. */
    IF_WINDING,
    /** The winding of a discriminator or ratio detector that is set to zero. */
    DISCRIMINATOR,
    /** A part of the oscillator's circuit. */
    OSCILLATOR,
    /** A part of an aerial or radio-frequency circuit. */
    SIGNAL,
    /** A wave trap. */
    TRAP
}
