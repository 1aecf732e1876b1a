package org.slugpeak.core.figure;

import org.slugpeak.core.word.Coded;

/** What most of a figure's uncertainty comes from. Immutable; any thread may use it. */
public enum Limit implements Coded {
    /** The meter's last digit. */
    LAST_DIGIT,
    /** Noise of the reading. */
    NOISE,
    /** The line between the settings that were measured. */
    INTERPOLATION,
    /** The generator's attenuator. */
    ATTENUATOR,
    /** How well the dial of a generator that a hand sets is known. */
    DIAL;

    @Override
    public String code() {
        return Coded.of(this);
    }
}
