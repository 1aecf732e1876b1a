package org.slugpeak.core.peak;

/** Which way the reading goes, as far as the noise lets it be known. Immutable; any thread may use it. */
public enum Trend {
    /** Towards what is sought is not meant: the magnitude grows. */
    RISING("rising"),
    /** The magnitude shrinks. */
    FALLING("falling"),
    /** No movement that the noise lets be seen. */
    STEADY("steady");

    private final String code;

    Trend(String code) {
        this.code = code;
    }

    /**
     * The word used in records.
     *
     * @return lower case
     */
    public String code() {
        return code;
    }
}
