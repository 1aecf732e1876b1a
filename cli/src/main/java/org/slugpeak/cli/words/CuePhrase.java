package org.slugpeak.cli.words;

/** What is said of the sound. Immutable; any thread may use it. */
public enum CuePhrase implements Saying {
    DIP,
    ZERO,
    MAY_LEAK,
    OFF,
    ON,
    BELL,
    REMOTE,
    NO_OUTPUT,
    NO_SUCH_OUTPUT,
    BACK,
    GONE,
    TOO_LARGE,
    NOT_WRITTEN,
    NOT_CLOSED;

    @Override
    public String kind() {
        return "cue";
    }
}
