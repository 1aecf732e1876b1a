package org.slugpeak.cli.words;

/** What is said of sessions that were kept. Immutable; any thread may use it. */
public enum SessionsPhrase implements Saying {
    STARTED,
    SET,
    SERIAL,
    ADJUSTERS,
    READINGS,
    FILE,
    CUT,
    WAITS,
    READS,
    NONE,
    ONE,
    FOUND,
    MORE,
    NO_PERSONS,
    PERSONS,
    WROTE;

    @Override
    public String kind() {
        return "sessions";
    }
}
