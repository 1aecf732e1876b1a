package org.slugpeak.cli.words;

/** What is said of a receiver's sheet. Immutable; any thread may use it. */
public enum SheetPhrase implements Saying {
    INPUT,
    MODULATED,
    CARRIER,
    TUNE_SET,
    TUNE_GENERATOR,
    TURN_VOLUME_DOWN,
    THEN,
    BEGUN,
    BEFORE,
    AFTER,
    POWER,
    LEVEL,
    AERIAL,
    READS,
    TOO_MUCH,
    FIGURE,
    SENSITIVITY,
    SIGNAL_TO_NOISE,
    INPUT_FOR_TEN_DB,
    IMAGE_REJECTION,
    IF_REJECTION,
    WIDTH_6_DB,
    WIDTH_20_DB,
    WIDTH_40_DB,
    AVC,
    HUM,
    EMF,
    DECIBELS,
    KILOHERTZ,
    AT_LEAST,
    AT_MOST,
    NOT_MEASURED,
    WITHIN,
    WITHIN_KILOHERTZ,
    LAST_DIGIT,
    NOISE,
    INTERPOLATION,
    ATTENUATOR,
    OVER,
    OUTCOME,
    ENDED_BEFORE;

    @Override
    public String kind() {
        return "sheet";
    }
}
