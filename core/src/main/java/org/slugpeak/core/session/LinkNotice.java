package org.slugpeak.core.session;

import java.util.Arrays;
import java.util.Optional;

/** Something an instrument did that breaks the run of its readings though the link is sound. Immutable; any thread may use it. */
public enum LinkNotice {
    /** The meter changed its range by itself: the readings before and after it differ in resolution and may differ in value. */
    RANGE_CHANGED("range-changed"),
    /** The instrument started anew: it was reset, or its power came back. */
    RESTARTED("restarted"),
    /** The instrument says that it could not send all its readings. */
    READINGS_SKIPPED("readings-skipped");

    private final String code;

    LinkNotice(String code) {
        this.code = code;
    }

    /**
     * The word used in records and reports.
     *
     * @return lower case, hyphenated, never empty
     */
    public String code() {
        return code;
    }

    /**
     * Finds the notice with a given code.
     *
     * @param code as written in records
     * @return empty if there is none
     */
    public static Optional<LinkNotice> ofCode(String code) {
        return Arrays.stream(values()).filter(each -> each.code.equals(code)).findFirst();
    }
}
