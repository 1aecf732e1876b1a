package org.slugpeak.cli.words;

/** The answers of superhet arithmetic. Immutable; any thread may use it. */
public enum SuperhetPhrase implements Saying {
    DIAL,
    OSCILLATOR,
    IMAGE,
    HEARD_AGAIN,
    ITSELF,
    TIMES,
    WANTED,
    FOOLS,
    ON_SIGNAL,
    ON_IMAGE,
    ON_INTERMEDIATE,
    NOT_HEARD,
    AVOID,
    ORDER,
    M,
    N,
    SIGNAL,
    BREAK_THROUGH,
    IS_WANTED,
    IS_IMAGE,
    COIL,
    PADDER,
    TRIMMER,
    GANG,
    ERROR,
    IMAGE_DOWN,
    FIELD,
    CHECK_FIELD,
    READS_LOW,
    WITHOUT_METER,
    CONSTANT_ERROR,
    VOLTS,
    POWER;

    @Override
    public String kind() {
        return "superhet";
    }
}
