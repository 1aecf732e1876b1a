package org.slugpeak.core.figure;

/** What a person does beside setting the generator. Immutable; any thread may use it. */
public enum Handwork {
    /** Nothing. */
    NONE,
    /** Tunes the set to the generator, its volume full on. */
    TUNE_SET,
    /** Tunes the generator for the greatest reading near its frequency. */
    TUNE_GENERATOR,
    /** Turns the volume down until the reading is the reference. */
    TURN_VOLUME_DOWN;

    /**
     * Whether it is done at the set, where no generator that obeys can do it.
     *
     * @return true for dial and volume
     */
    public boolean isAtSet() {
        return this == TUNE_SET || this == TURN_VOLUME_DOWN;
    }
}
