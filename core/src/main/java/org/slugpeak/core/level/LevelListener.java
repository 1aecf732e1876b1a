package org.slugpeak.core.level;

import org.slugpeak.core.reading.Condition;

/**
 * Hears what a {@link LevelWatch} has found, in the thread that feeds it, before the call returns. All times are those of the
 * reading that decided it.
 */
public interface LevelListener {

    /**
     * The meter or converter is beyond its range, or the audio clips.
     *
     * @param tNanos when
     * @param condition which
     */
    void overload(long tNanos, Condition condition);

    /**
     * The reading no longer follows the generator.
     *
     * @param tNanos when
     * @param slope decibels of the reading over decibels of the generator
     */
    void flattening(long tNanos, double slope);

    /**
     * The overload or the flattening has gone.
     *
     * @param tNanos when
     */
    void cleared(long tNanos);

    /**
     * Too little signal over noise to place a peak within 0.1 dB.
     *
     * @param tNanos when
     * @param snrDb signal over noise of one reading
     */
    void weak(long tNanos, double snrDb);

    /**
     * The reading moves though nothing is turned.
     *
     * @param tNanos when
     * @param dbPerMinute speed; negative where the magnitude falls
     */
    void drift(long tNanos, double dbPerMinute);

    /**
     * The reading that drifted has settled.
     *
     * @param tNanos when
     * @param dbPerMinute what is left
     */
    void settled(long tNanos, double dbPerMinute);

    /**
     * Something may be wrong.
     *
     * @param tNanos when
     * @param suspicion what
     * @param amount the figure that gave it away, in the unit that its check counts in; NaN where there is none
     */
    void suspected(long tNanos, Suspicion suspicion, double amount);

    /**
     * It is not so, or no longer.
     *
     * @param tNanos when
     * @param suspicion what had been suspected
     */
    void noLongerSuspected(long tNanos, Suspicion suspicion);

    /**
     * A peak was much wider than the earlier ones.
     *
     * @param tNanos when
     * @param times how many times as wide
     */
    void widePeak(long tNanos, double times);

    /**
     * Decibels are doubtful, because no resting reading was taken.
     *
     * @param tNanos when
     */
    void restMissing(long tNanos);

    /**
     * A check asks for a move.
     *
     * @param tNanos when
     * @param check which
     * @param move which of its moves, from 0; as many as it has moves: put things back
     * @param skirtHz how far to either side skirts are compared, Hz
     * @param imageDialHz where on the dial the image is looked for, Hz; NaN where nobody has said
     */
    void asked(long tNanos, CheckKind check, int move, double skirtHz, double imageDialHz);

    /**
     * A check has its result.
     *
     * @param tNanos when
     * @param check which
     * @param figures what came of it
     */
    void checked(long tNanos, CheckKind check, CheckFigures figures);

    /**
     * A step of the generator shows what the detector makes of it.
     *
     * @param tNanos when
     * @param generatorDb against the first of the steps, which is 0
     * @param level above rest, in the unit of the readings
     */
    void lawStep(long tNanos, double generatorDb, double level);

    /**
     * A check is over, whatever came of it.
     *
     * @param tNanos when
     */
    void checkOver(long tNanos);

    /**
     * A check was given up.
     *
     * @param tNanos when
     * @param waitedSeconds how long nothing changed
     */
    void checkDropped(long tNanos, double waitedSeconds);

    /**
     * The reading leaves its window.
     *
     * @param tNanos when
     * @param factor by which the generator's output should be multiplied
     * @param toReading what will then be read, in the unit of the readings
     */
    void cutGenerator(long tNanos, double factor, double toReading);

    /**
     * The reading followed the generator.
     *
     * @param tNanos when
     * @param changeDb by how much
     */
    void generatorChanged(long tNanos, double changeDb);

    /**
     * A change of the generator was announced, and the reading did not change.
     *
     * @param tNanos when
     */
    void generatorUnchanged(long tNanos);
}
