package org.slugpeak.cli.words;

/** What is said of a generator that is set from here. Immutable; any thread may use it. */
public enum GeneratorPhrase implements Saying {
    IS,
    STOOD,
    ON,
    OFF,
    NO_LEVEL,
    LEVEL,
    OBEYS,
    OBEYS_LEVEL,
    OBEYS_OUTPUT,
    OBEYS_MODULATION,
    FROM_HERE,
    BY_HAND,
    OTHERWISE,
    KINDS;

    @Override
    public String kind() {
        return "generator";
    }
}
