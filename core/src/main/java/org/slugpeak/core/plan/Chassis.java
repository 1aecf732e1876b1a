package org.slugpeak.core.plan;

/** What the chassis of a set is tied to. Immutable; any thread may use it. */
public enum Chassis {
    /** A mains transformer separates it from the mains. */
    TRANSFORMER("transformer"),
    /** AC/DC or half-wave set: the chassis may stand at full mains. */
    LIVE("live"),
    /** Not known: to be treated as live. */
    UNKNOWN("unknown");

    private final String code;

    Chassis(String code) {
        this.code = code;
    }

    /**
     * The word used in plans.
     *
     * @return lower case
     */
    public String code() {
        return code;
    }
}
