package org.slugpeak.cli.words;

/** What is asked for, as short as it can be written large beside a reading. Immutable; any thread may use it. */
public enum BriefPhrase implements Saying {
    GENERATOR_OFF,
    GENERATOR_ON,
    HALVE,
    HALVE_AGAIN,
    QUARTER,
    GENERATOR_UP,
    SET_OFF,
    HALF_TURN_IN,
    HALF_TURN_BACK,
    TUNE_UP,
    TUNE_DOWN,
    TUNE_BACK,
    DIAL_TO_IMAGE,
    DIAL_BACK,
    STEP_DOWN,
    STEPS_UP,
    SET_UP,
    TURN,
    HANDS_OFF,
    FREQUENCY,
    MARK,
    GENERATOR_FAILS;

    @Override
    public String kind() {
        return "brief";
    }
}
