package org.slugpeak.core.reading;

import org.slugpeak.core.word.Coded;

/**
 * How far one reading can be believed. Immutable; any thread may use it.
 */
public enum Condition implements Coded {
    /** A plain number inside the instrument's range. */
    OK("ok", true, true),
    /** The instrument says that the input is beyond its range and gives no number. */
    OVER_RANGE("over-range", false, false),
    /** A converter stands at the end of its scale: the number is a lower bound of the magnitude, not a value. */
    FULL_SCALE("full-scale", true, false),
    /** An audio input or the set's own audio stage clips: the number is too small. */
    CLIPPING("clipping", true, false),
    /** The instrument answers that it has no value (SCPI 9.91E37), or there is no tone to measure. */
    NO_VALUE("no-value", false, false);

    private final String code;
    private final boolean hasValue;
    private final boolean trusted;

    Condition(String code, boolean hasValue, boolean trusted) {
        this.code = code;
        this.hasValue = hasValue;
        this.trusted = trusted;
    }

    @Override
    public String code() {
        return code;
    }

    /**
     * Whether a reading in this condition carries a number at all.
     *
     * @return true where {@link Reading#value()} means something
     */
    public boolean hasValue() {
        return hasValue;
    }

    /**
     * Whether the number may take part in finding a maximum.
     *
     * @return true for {@link #OK} only
     */
    public boolean isTrusted() {
        return trusted;
    }
}
