package org.slugpeak.core.signal;

import org.slugpeak.core.reading.Condition;

/** Hears the levels of an {@link AudioMeter}, in the thread that feeds it. */
@FunctionalInterface
public interface AudioListener {

    /**
     * A level is due.
     *
     * @param frame number of samples that the meter had taken
     * @param levelFs in FS; 0 where the condition has no value
     * @param condition {@code OK}, {@code CLIPPING} or {@code NO_VALUE}
     */
    void level(long frame, double levelFs, Condition condition);
}
