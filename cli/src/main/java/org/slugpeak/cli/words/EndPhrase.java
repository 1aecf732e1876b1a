package org.slugpeak.cli.words;

/** Why a session ended. Immutable; any thread may use it. */
public enum EndPhrase implements Saying {
    DONE,
    QUIT,
    INTERRUPTED,
    TERMINAL_CLOSED,
    FAILED,
    SOURCE_ENDED,
    PLAN_THROUGH,
    CURVE_COMPLETE,
    SHEET_COMPLETE,
    GENERATOR_ASTRAY,
    BROKEN_OFF;

    @Override
    public String kind() {
        return "end";
    }
}
