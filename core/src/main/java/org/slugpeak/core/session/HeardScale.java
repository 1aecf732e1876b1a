package org.slugpeak.core.session;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.DetectorLaw;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.level.MeterScale;
import org.slugpeak.core.word.Coded;

/**
 * The scale of the meter as the records of a session tell it: where it is clipped, the resting readings and the laws of detectors that
 * were measured, the last one of each. One thread at a time.
 */
public final class HeardScale implements RecordSink {

    private final MeterScale scale = new MeterScale();
    private final List<DetectorLaw.Step> steps = new ArrayList<>();
    private final Hearing hearing = new Hearing();

    /** Nothing heard yet. */
    public HeardScale() {}

    /**
     * The scale as it stands.
     *
     * @return goes on with the records
     */
    public MeterScale scale() {
        return scale;
    }

    @Override
    public void take(SessionRecord record) {
        record.tellFamily(hearing);
    }

    /** What makes the scale another one. */
    private final class Hearing implements FamilyListener {

        @Override
        public void said(Said it) {
            if (it instanceof Said.Command given
                    && given.instruction() instanceof Instruction.Level level
                    && level.command().verb() == LevelCommand.Verb.POINT) {
                Coded.find(MeterPoint.class, level.command().detail()).ifPresent(scale::moveTo);
            }
        }

        @Override
        public void caution(Caution it) {
            if (it instanceof Caution.Checked checked && checked.check() == CheckKind.REST) {
                scale.takeRest(checked.figures().figure());
            }
        }

        @Override
        public void curveWork(CurveWork it) {
            if (it instanceof CurveWork.LawStep step) {
                if (step.generatorDb() == 0) {
                    steps.clear();
                }
                steps.add(new DetectorLaw.Step(step.generatorDb(), step.level()));
                scale.takeLaw(DetectorLaw.of(steps));
            }
        }
    }
}
