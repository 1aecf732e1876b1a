package org.slugpeak.cli.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** Steps the generator through a response curve. One thread: the session's. */
public final class CurveGuide implements Guide {

    private static final CurveConcerns CONCERNS = new CurveConcerns();

    private final CurveProgress progress;
    private final double lawHz;
    private final GeneratorControl generator;
    private Optional<BridgeException> failure = Optional.empty();
    private boolean finished;

    /**
     * A guide at the beginning of a curve.
     *
     * @param progress what is to be measured
     * @param lawHz where the steps of the detector's law are made, Hz
     * @param generator who sets it
     */
    public CurveGuide(CurveProgress progress, double lawHz, GeneratorControl generator) {
        this.progress = progress;
        this.lawHz = lawHz;
        this.generator = generator;
    }

    /**
     * What the generator answered, where the curve ended for its sake.
     *
     * @return empty where the generator did as it was told
     */
    public Optional<BridgeException> failure() {
        return failure;
    }

    @Override
    public void begin(Analysis analysis) {
        progress.takeCheck().ifPresent(check -> analysis.command(new Instruction.Level(LevelCommand.check(check))));
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
    }

    /** Nothing is turned: what finder and level watch make of the moving generator would mislead. */
    @Override
    public boolean passesOn(SessionRecord record) {
        return record.matchFamily(CONCERNS);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        progress.takeCheck().ifPresent(check -> begin(check, analysis, control));
        progress.takeNews().ifPresent(taken -> tell(taken, analysis));
        OptionalDouble hz = progress.toSet();
        if (hz.isPresent() && failure.isEmpty()) {
            set(hz.getAsDouble(), analysis, control);
        } else if (progress.isOver() && !finished) {
            finished = true;
            analysis.tell(CurveWork.CurveOver::new);
            control.quit(EndReason.Known.CURVE_COMPLETE);
        }
    }

    private void begin(CheckKind check, Analysis analysis, SessionControl control) {
        try {
            if (check == CheckKind.DETECTOR_LAW) {
                generator.frequency(lawHz);
            }
            analysis.command(new Instruction.Level(LevelCommand.check(check)));
        } catch (BridgeException refused) {
            stop(refused, control);
        }
    }

    private static void tell(CurveProgress.Taken taken, Analysis analysis) {
        if (Double.isFinite(taken.level())) {
            analysis.tell(at -> new CurveWork.PointTaken(at, taken.hz(), taken.level()));
        } else {
            analysis.tell(at -> new CurveWork.PointLeftOut(at, taken.hz()));
        }
    }

    private void set(double hz, Analysis analysis, SessionControl control) {
        try {
            double real = generator.frequency(hz);
            int number = progress.index() + 1;
            progress.set(real);
            analysis.tell(at -> new Request.SetGenerator(at, real, number, progress.size()));
        } catch (BridgeException refused) {
            stop(refused, control);
        }
    }

    private void stop(BridgeException refused, SessionControl control) {
        failure = Optional.of(refused);
        control.quit(EndReason.Known.GENERATOR_ASTRAY);
    }

    @Override
    public void next(Analysis analysis) {
        progress.next();
    }

    @Override
    public void back(Analysis analysis) {
        progress.back();
    }

    @Override
    public void skip(Analysis analysis) {
        progress.skip();
    }
}
