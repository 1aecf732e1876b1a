package org.slugpeak.bridge.sim;

/** What the operator of the simulated bench has to say at each step of a demonstration. Immutable; any thread may use it. */
public enum Narration {
    /** The bench before anything is measured. */
    BENCH,
    /** Why the resting reading comes first. */
    REST_FIRST,
    /** Why the level is checked. */
    LEVEL_CHECK,
    /** A slug at which somebody has been. */
    OUTWARDS,
    /** The first slug. */
    FROM_THE_DETECTOR,
    /** The second slug. */
    ITS_BOTTOM_SLUG,
    /** The third slug. */
    FIRST_TOP,
    /** The fourth slug. */
    FIRST_BOTTOM,
    /** Why there is another round. */
    ROUND_TWO,
    /** Waiting, to see what moves by itself. */
    HANDS_OFF,
    /** Why the skirts are compared. */
    SKIRTS,
    /** The end. */
    DONE,
    /** The generator goes to the aerial socket. */
    TO_THE_AERIAL,
    /** The low end of medium wave. */
    LOW_END,
    /** Short wave. */
    SHORT_WAVE;

    /** Puts it into words. */
    @FunctionalInterface
    public interface Narrator {

        /**
         * What is said.
         *
         * @param step at which step
         * @return one line
         */
        String say(Narration step);
    }
}
