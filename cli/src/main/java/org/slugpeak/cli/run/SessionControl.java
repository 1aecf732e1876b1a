package org.slugpeak.cli.run;

import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;

/** What a user (key, pedal, dwell) may ask of a running session. Called in the session's own thread. */
public interface SessionControl {

    /**
     * Makes a note at the last reading.
     *
     * @param text one line
     */
    void note(String text);

    /**
     * Orders the analysis to do something.
     *
     * @param instruction what
     */
    void command(Instruction instruction);

    /**
     * Somebody types what a counter at the generator shows, or no longer.
     *
     * @param underWay whether the end of it is to be waited for
     */
    default void counting(boolean underWay) {}

    /**
     * Takes what a counter at the generator shows.
     *
     * @param hz Hz, positive
     */
    default void counted(double hz) {}

    /** Records the adjuster as done, forgets the best and begins the next one. */
    void nextAdjuster();

    /** Forgets the best and begins the same adjuster again; does nothing where a plan is carried out. */
    void sameAdjuster();

    /** Goes back to the step before; does nothing where no plan is carried out. */
    void previousAdjuster();

    /** Records that the adjuster is left as it is, and begins the next one. */
    void skipAdjuster();

    /**
     * Ends the session.
     *
     * @param reason one word, for the {@code end} record
     */
    void quit(EndReason reason);
}
