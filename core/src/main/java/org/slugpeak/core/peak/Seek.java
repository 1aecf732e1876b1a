package org.slugpeak.core.peak;

import java.util.Locale;

/** What the user turns for. Immutable; any thread may use it. */
public enum Seek {
    /** The greatest magnitude: almost every tuned circuit. */
    PEAK,
    /** The smallest magnitude: wave traps. */
    DIP,
    /** The zero between a positive and a negative swing: discriminators and ratio detectors. */
    ZERO;

    /**
     * The word used on the command line and in records.
     *
     * @return lower case
     */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Finds what a word asks for.
     *
     * @param code {@code peak}, {@code dip} or {@code zero}
     * @return what to seek
     * @throws IllegalArgumentException for any other word
     */
    public static Seek ofCode(String code) {
        for (Seek seek : values()) {
            if (seek.code().equals(code)) {
                return seek;
            }
        }
        throw new IllegalArgumentException("'" + code + "' is none of peak, dip, zero");
    }
}
