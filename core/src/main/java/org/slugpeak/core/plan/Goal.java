package org.slugpeak.core.plan;

import org.slugpeak.core.peak.Seek;

/** What an adjuster is turned for. Immutable; any thread may use it. */
public enum Goal {
    /** The greatest reading. */
    PEAK("peak", Seek.PEAK),
    /** The smallest reading: wave traps. */
    DIP("dip", Seek.DIP),
    /** The zero between two signs: discriminators and ratio detectors. */
    ZERO("zero", Seek.ZERO),
    /** The greatest reading while the pointer stays on its mark: the oscillator. */
    ON_DIAL("on-dial", Seek.PEAK);

    private final String code;
    private final Seek seek;

    Goal(String code, Seek seek) {
        this.code = code;
        this.seek = seek;
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
}
