package org.slugpeak.cli.words;

/** What is said of dials. Immutable; any thread may use it. */
public enum ScalePhrase implements Saying {
    DIAL,
    TRUE,
    OFF_BY,
    CORRECTION,
    SET_DIAL,
    GIVES,
    BEND_UNKNOWN,
    BEND,
    OUTSIDE_DIAL,
    OUTSIDE_TRUE,
    NO_MARKS,
    LINE,
    RIGHT,
    TRIMMER_MORE,
    TRIMMER_LESS,
    PADDER_MORE,
    PADDER_LESS,
    SLUG_IN,
    SLUG_OUT,
    POINTER,
    MIDDLE;

    @Override
    public String kind() {
        return "scale";
    }
}
