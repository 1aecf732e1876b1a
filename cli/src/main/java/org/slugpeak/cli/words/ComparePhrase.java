package org.slugpeak.cli.words;

/** What is said of two sessions beside each other. Immutable; any thread may use it. */
public enum ComparePhrase implements Saying {
    TITLE,
    FROM,
    TO,
    ADJUSTERS,
    ADJUSTER,
    DIALS,
    POINT,
    CURVES,
    CURVE,
    SHEETS,
    GAIN,
    LEFT_AT,
    DIAL_ERROR,
    ZERO,
    CENTRE,
    WIDTH,
    THEN,
    NOW,
    CHANGE,
    UNCERTAINTY,
    SAID,
    UNCHANGED,
    CHANGED,
    CANNOT_BE_SAID,
    ONLY_THEN,
    ONLY_NOW,
    OTHER_WAY_ROUND,
    OTHER_PLAN,
    NO_PLAN,
    BY_NAME,
    OTHER_CURVE,
    OTHER_CONDITIONS,
    NOTHING,
    HOW;

    @Override
    public String kind() {
        return "compare";
    }
}
