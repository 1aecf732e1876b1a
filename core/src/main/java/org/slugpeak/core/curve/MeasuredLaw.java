package org.slugpeak.core.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.level.DetectorLaw;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** Gathers the steps of the detector's law from the records of a session; the last law counts. One thread at a time. */
public final class MeasuredLaw implements RecordSink {

    private final List<DetectorLaw.Step> steps = new ArrayList<>();
    private Optional<DetectorLaw> law = Optional.empty();

    /** Nothing gathered yet. */
    public MeasuredLaw() {}

    @Override
    public void take(SessionRecord record) {
        if (record instanceof CurveWork.LawStep step) {
            if (step.generatorDb() == 0) {
                steps.clear();
            }
            steps.add(new DetectorLaw.Step(step.generatorDb(), step.level()));
            law = DetectorLaw.of(steps);
        }
    }

    /**
     * The law.
     *
     * @return empty where none was measured
     */
    public Optional<DetectorLaw> law() {
        return law;
    }

    /**
     * The level that a straight detector would have shown.
     *
     * @param level above rest, in the unit of the readings
     * @return in the unit of the readings; the same where no law was measured
     */
    public double straight(double level) {
        return law.map(it -> it.straight(level)).orElse(level);
    }
}
