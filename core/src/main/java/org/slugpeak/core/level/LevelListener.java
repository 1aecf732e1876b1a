package org.slugpeak.core.level;

import org.slugpeak.core.reading.Condition;

/** Hears what a {@link LevelWatch} has to say, in the thread that feeds it, before the call returns. */
public interface LevelListener {

    /**
     * The meter or converter is beyond its range, or the audio clips.
     *
     * @param tNanos time of the reading that decided it
     * @param condition which
     * @param advice what to do, one line
     */
    void overload(long tNanos, Condition condition, String advice);

    /**
     * The reading no longer follows the generator.
     *
     * @param tNanos time of the reading that decided it
     * @param advice what to do, one line
     */
    void flattening(long tNanos, String advice);

    /**
     * The overload or the flattening has gone.
     *
     * @param tNanos time of the reading that decided it
     */
    void cleared(long tNanos);

    /**
     * Too little signal over noise to place a peak within 0.1 dB.
     *
     * @param tNanos time of the reading that decided it
     * @param snrDb signal over noise of one reading
     * @param advice what to do, one line
     */
    void weak(long tNanos, double snrDb, String advice);

    /**
     * The reading moves though nothing is turned.
     *
     * @param tNanos time of the reading that decided it
     * @param dbPerMinute speed; negative where the magnitude falls
     */
    void drift(long tNanos, double dbPerMinute);

    /**
     * Something the user should know or do.
     *
     * @param tNanos time of the reading that decided it
     * @param topic lower case, hyphenated
     * @param text one line
     * @param amount the figure behind it; NaN where there is none
     */
    void advice(long tNanos, String topic, String text, double amount);
}
