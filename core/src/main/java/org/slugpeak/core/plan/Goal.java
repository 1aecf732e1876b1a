package org.slugpeak.core.plan;

import org.slugpeak.core.peak.Seek;

/**
 * What an adjuster is turned for, and what follows from it for the progress of a plan. Another goal is one more constant, with an
 * answer to everything that is asked here. Immutable; any thread may use it.
 */
public enum Goal {
    /** The greatest reading. */
    PEAK("peak", Seek.PEAK, true),
    /** The smallest reading: wave traps. */
    DIP("dip", Seek.DIP, false),
    /** The zero between two signs: discriminators and ratio detectors. */
    ZERO("zero", Seek.ZERO, false),
    /** The greatest reading while the pointer stays on its mark: the oscillator. */
    ON_DIAL("on-dial", Seek.PEAK, false),
    /** The beat note that falls to nothing: the pitch of a beat oscillator, seen as a dip of the sound. */
    ZERO_BEAT("zero-beat", Seek.DIP, false),
    /** The greatest reading while the generator itself is moved: where a crystal is. */
    CRYSTAL("crystal", Seek.PEAK, false);

    private final String code;
    private final Seek seek;
    private final boolean ofCoupledPair;

    Goal(String code, Seek seek, boolean ofCoupledPair) {
        this.code = code;
        this.seek = seek;
        this.ofCoupledPair = ofCoupledPair;
    }

    /**
     * The word used in plans.
     *
     * @return lower case, hyphenated
     */
    public String code() {
        return code;
    }

    /**
     * What the peak finder has to look for.
     *
     * @return its setting
     */
    public Seek seek() {
        return seek;
    }

    /**
     * Whether the adjuster may belong to a transformer with two coupled circuits, each brought to the same maximum: what it gains in a later
     * round tells of their coupling.
     *
     * @return true where it may
     */
    public boolean isOfCoupledPair() {
        return ofCoupledPair;
    }

    /**
     * Whether the generator itself is moved, so that a plan must say near which frequency.
     *
     * @return true for what is sought with the generator
     */
    public boolean movesGenerator() {
        return switch (this) {
            case CRYSTAL -> true;
            case PEAK, DIP, ZERO, ON_DIAL, ZERO_BEAT -> false;
        };
    }

    /**
     * Whether it is found as sound only, at the voice coil.
     *
     * @return true for what no DC voltage shows
     */
    public boolean isHeard() {
        return switch (this) {
            case ZERO_BEAT -> true;
            case PEAK, DIP, ZERO, ON_DIAL, CRYSTAL -> false;
        };
    }

    /**
     * Whether the pointer belongs on its mark.
     *
     * @return true for the oscillator
     */
    public boolean isOnMark() {
        return switch (this) {
            case ON_DIAL -> true;
            case PEAK, DIP, ZERO, ZERO_BEAT, CRYSTAL -> false;
        };
    }

    /**
     * Whether it is a maximum of the signal that can be met twice, at the signal and at its image.
     *
     * @return true where a look at the image proves something
     */
    public boolean hasImage() {
        return switch (this) {
            case PEAK, ON_DIAL -> true;
            case DIP, ZERO, ZERO_BEAT, CRYSTAL -> false;
        };
    }

    /**
     * Whether levels can be compared in decibels: around a zero there is no ratio.
     *
     * @return false where the sign of a reading counts
     */
    public boolean hasDecibels() {
        return !seek.signCounts();
    }

    /**
     * What an adjuster has gained for its goal.
     *
     * @param riseDb by how much the reading has risen, dB; NaN if not known
     * @return dB, positive where it is better than before: less is more in a dip; NaN if not known, and where there are no decibels
     */
    public double gainDb(double riseDb) {
        return hasDecibels() ? seek.better(riseDb, 0) : Double.NaN;
    }
}
