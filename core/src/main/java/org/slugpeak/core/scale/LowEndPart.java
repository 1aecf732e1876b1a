package org.slugpeak.core.scale;

/** What sets the low end of a receiver's oscillator. Immutable; any thread may use it. */
public enum LowEndPart {
    /** A padder in series with the gang. */
    PADDER,
    /** The slug of the oscillator coil. */
    SLUG
}
