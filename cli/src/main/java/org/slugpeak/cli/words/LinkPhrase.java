package org.slugpeak.cli.words;

/** What is said of why a link changed, or the run of readings broke. Immutable; any thread may use it. */
public enum LinkPhrase implements Saying {
    PULLED,
    SOUND_GONE,
    SOUND_SILENT,
    RANGE_TO_BE_ASKED_FOR,
    RANGE_TO_BE_SET,
    CLOCK_AGAIN,
    NOT_ALL_SENT,
    SILENT,
    NO_METER_YET,
    NO_PROGRAM_YET,
    AFTER,
    BOARD_RESTARTED,
    BOARD_SET_ANEW,
    TIMES_AGAIN;

    @Override
    public String kind() {
        return "link";
    }
}
