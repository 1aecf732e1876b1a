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
    TRAP,
    /** The generator itself, moved to where a crystal is. */
    CRYSTAL,
    /** The tuned load of a crystal filter. */
    CRYSTAL_LOAD,
    /** The oscillator of a second conversion. */
    SECOND_OSCILLATOR,
    /** The beat oscillator. */
    BEAT_OSCILLATOR;

    /** Whether the signal for it is at the intermediate frequency and passes no converter before. */
    boolean isAfterConverter() {
        return switch (this) {
            case IF_WINDING, DISCRIMINATOR, CRYSTAL, CRYSTAL_LOAD, SECOND_OSCILLATOR, BEAT_OSCILLATOR -> true;
            case OSCILLATOR, SIGNAL, TRAP -> false;
        };
    }

    /** Whether the crystal filter is switched in for it. */
    boolean isThroughCrystal() {
        return this == CRYSTAL || this == CRYSTAL_LOAD;
    }
}
