package org.slugpeak.cli.words;

/** What is said of response curves. Immutable; any thread may use it. */
public enum CurvePhrase implements Saying {
    HIGHEST,
    CENTRE,
    NO_CENTRE,
    DOWN,
    FROM,
    TO,
    WIDTH,
    BEYOND_SPAN,
    SKIRTS,
    SKIRTS_UNKNOWN,
    SKIRTS_ARE,
    EVEN,
    TOO_HIGH,
    TOO_LOW,
    ONE_HUMP,
    HUMPS,
    ONE_PAIR,
    PAIRS,
    MODEL,
    POOR_FIT,
    OVER_COUPLED,
    NO_MODEL,
    BEFORE,
    NOW,
    CENTRE_ROW,
    WIDE,
    HUMPS_ROW,
    HIGHEST_ROW,
    SAME_GENERATOR,
    UNKNOWN,
    BEYOND,
    OVERLOAD,
    READS,
    NO_REST,
    NO_CURVE;

    @Override
    public String kind() {
        return "curve";
    }
}
