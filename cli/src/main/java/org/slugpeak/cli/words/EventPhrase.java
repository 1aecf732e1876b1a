package org.slugpeak.cli.words;

/** What is said of events, line by line. Immutable; any thread may use it. */
public enum EventPhrase implements Saying {
    BEGUN,
    SOUGHT,
    SHORT,
    HELD,
    TWO_PEAKS,
    FIRST,
    SECOND,
    FLAT,
    END_OF_TRAVEL,
    REVERSED,
    DEAD_ZERO,
    ENDED,
    LOST,
    STALE,
    RESUMED,
    PLEASE,
    SET_UP,
    NOW,
    DONE,
    GAIN,
    LEFT_AS_IT_IS,
    OVERLOAD,
    OVERLOAD_GONE,
    WEAK,
    DRIFTING,
    MARK,
    METER_AT,
    CHECK_OF,
    ALL_DONE,
    POINT_READS,
    CHECK_DROPPED,
    LOOKED_AFTER,
    CHANGE_GENERATOR,
    GENERATOR_TURNING,
    GENERATOR_TURNED,
    GENERATOR_AWAY,
    SKIRTS_AT,
    WINDOW,
    NO_WINDOW,
    IMAGE_AT,
    TAKEN_BACK;

    @Override
    public String kind() {
        return "event";
    }
}
