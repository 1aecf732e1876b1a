package org.slugpeak.cli.words;

/** The words of the page for a browser, and what is said of it in the terminal. Immutable; any thread may use it. */
public enum PagePhrase implements Saying {
    LANGUAGE,
    TITLE,
    WITHOUT_SCRIPTS,
    CONNECTING,
    LOST,
    LOST_MORE,
    OVER,
    SOUND,
    VIBRATION,
    NO_VIBRATION,
    STAYS_AWAKE,
    MAY_SLEEP,
    LAST_MINUTE,
    CURVE,
    ADJUSTER,
    GAIN,
    REFUSED,
    NEXT,
    MARK,
    DONE,
    AGAIN,
    PREVIOUS,
    SKIP,
    REST,
    LEVEL,
    CUT,
    CHECK,
    DROP,
    REPAIRED,
    NOT_HERE,
    STANDS_AT,
    HERE_ONLY,
    ON_NETWORK,
    ON_NETWORK_WITH_KEYS,
    WRONG_ADDRESS;

    @Override
    public String kind() {
        return "page";
    }
}
