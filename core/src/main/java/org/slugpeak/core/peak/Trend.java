package org.slugpeak.core.peak;

import java.util.Locale;

/** Which way the reading goes, as far as the noise lets it be known. Immutable; any thread may use it. */
public enum Trend {
    /** Towards what is sought is not meant: the magnitude grows. */
    RISING,
    /** The magnitude shrinks. */
    FALLING,
    /** No movement that the noise lets be seen. */
    STEADY;

    /**
     * The word used in records.
     *
     * @return lower case
     */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
