package org.slugpeak.core.sheet;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;

/** One measurement: says how the generator is to be set next, takes what was read, and gives the figures. One thread at a time. */
interface SheetTask {

    /** Which figures it gives. */
    List<FigureKind> kinds();

    /** What is to be set now, the same until a reading was taken; empty where it is over. */
    Optional<InputSetting> next();

    /** What was read at the setting that was asked for, as it really stood. */
    void take(InputSetting set, OutputReading reading);

    /** What was heard of the tone at the setting that is about to be taken. */
    default void hear(DistortionWatch.Distortion distortion) {}

    /** What came of it; where it was given up, what is known so far. Those that are missing were not measured. */
    List<Figure> figures();
}
