package org.slugpeak.cli.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.core.curve.CurveProgress;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.ScaleEstimate;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;

/** Steps the generator through a response curve. One thread: the session's. */
public final class CurveGuide implements Guide {

    private static final CurveConcerns CONCERNS = new CurveConcerns();

    /** What is counted further off is mistyped, or a harmonic: no dial errs by as much. Common practice, no source. */
    private static final double WORST_DIAL = 0.1;

    private final CurveProgress progress;
    private final boolean byHand;
    private final Optional<DialScale> marks;
    private boolean finished;

    /**
     * A guide at the beginning of a curve.
     *
     * @param progress what is to be measured
     * @param byHand whether a person sets the generator
     * @param marks how its dial errs; empty where nobody knows
     */
    public CurveGuide(CurveProgress progress, boolean byHand, Optional<DialScale> marks) {
        this.marks = marks;
        this.progress = progress;
        this.byHand = byHand;
    }

    @Override
    public void begin(Analysis analysis) {
        progress.takeCheck().ifPresent(check -> analysis.command(new Instruction.Level(LevelCommand.check(check))));
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return ofCurve(record);
    }

    /**
     * What of a record concerns anybody while a curve is measured: nothing is turned, and what finder and level watch make of the moving
     * generator would mislead.
     *
     * @param record of such a session, live or played again
     * @return goes to log, screen and ear; empty where nothing does
     */
    public static Optional<SessionRecord> ofCurve(SessionRecord record) {
        return Guide.uncompared(record, CONCERNS);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        begin(analysis);
        progress.takeNews().ifPresent(taken -> tell(taken, analysis));
        OptionalDouble hz = progress.toSet();
        if (hz.isPresent()) {
            set(hz.getAsDouble(), analysis);
        } else if (progress.isOver() && !finished) {
            finished = true;
            analysis.tell(CurveWork.CurveOver::new);
            control.quit(EndReason.Known.CURVE_COMPLETE);
        }
    }

    private static void tell(CurveProgress.Taken taken, Analysis analysis) {
        if (Double.isFinite(taken.level())) {
            analysis.tell(at -> new CurveWork.PointTaken(at, taken.hz(), taken.level()));
        } else {
            analysis.tell(at -> new CurveWork.PointLeftOut(at, taken.hz()));
        }
    }

    private void set(double hz, Analysis analysis) {
        int number = progress.index() + 1;
        progress.set(hz);
        Optional<ScaleEstimate> mark = marks.flatMap(scale -> scale.dialFor(hz));
        analysis.tell(at -> new Request.SetGenerator(at, hz, number, progress.size(), byHand, mark));
    }

    @Override
    public void counting(boolean underWay) {
        progress.counting(underWay);
    }

    @Override
    public void counted(Analysis analysis, double hz) {
        OptionalDouble asked = progress.wantedHz();
        if (asked.isPresent()) {
            double wantedHz = asked.getAsDouble();
            boolean taken = Math.abs(hz - wantedHz) <= WORST_DIAL * wantedHz;
            analysis.tell(at -> new Said.Counted(at, hz, wantedHz, taken));
        } else {
            analysis.note(AskPhrase.COUNTER_READS.of(hz / 1e3));
        }
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
