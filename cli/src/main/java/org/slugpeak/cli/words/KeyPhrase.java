package org.slugpeak.cli.words;

/** What each key does. Immutable; any thread may use it. */
public enum KeyPhrase implements Saying {
    GO,
    NEXT,
    MARK,
    DONE,
    TURN_LEFT,
    TURN_RIGHT,
    AGAIN,
    PREVIOUS,
    SKIP,
    REST,
    LEVEL,
    CUT,
    CHECK,
    DROP,
    COUNTER,
    REPAIRED,
    SOUND,
    LOUDER,
    SOFTER,
    PAGE,
    KEYS,
    QUIT;

    @Override
    public String kind() {
        return "key";
    }
}
