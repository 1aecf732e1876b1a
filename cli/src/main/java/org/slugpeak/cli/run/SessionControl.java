package org.slugpeak.cli.run;

/** What a user (key, pedal, dwell) may ask of a running session. Called in the session's own thread. */
public interface SessionControl {

    /**
     * Sets a mark at the last reading.
     *
     * @param text one line
     */
    void mark(String text);

    /** Forgets the best and begins the next adjuster. */
    void nextAdjuster();

    /**
     * Ends the session.
     *
     * @param reason one word, for the {@code end} record
     */
    void quit(String reason);
}
