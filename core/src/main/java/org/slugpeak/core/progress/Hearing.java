package org.slugpeak.core.progress;

import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Work;

/**
 * What a record means for the work, and which phase comes of it.
 *
 * @param phase the present one
 */
record Hearing(Job job, PlanPhase phase) implements Families<PlanPhase>, Finding.Matcher<PlanPhase> {

    @Override
    public PlanPhase other(SessionRecord it) {
        return phase;
    }

    @Override
    public PlanPhase frame(Frame it) {
        if (it instanceof ReadingTaken taken
                && taken.reading().condition().isTrusted()
                && !Double.isNaN(taken.smoothed())
                && !job.feeding().isAwaited()) {
            job.see(taken);
            hold(taken);
            return phase.reading(taken);
        }
        return phase;
    }

    private void hold(ReadingTaken taken) {
        if (phase.isLevelled()) {
            job.feeding()
                    .see(taken, job.scale())
                    .ifPresent(factor -> job.order(new Order.Level(LevelCommand.cut(factor))));
        }
    }

    @Override
    public PlanPhase said(Said it) {
        job.feeding().said(it);
        return phase;
    }

    @Override
    public PlanPhase caution(Caution it) {
        return it instanceof Overload overload && overload.cause() == Overload.Cause.FLATTENING
                ? phase.flattened(overload.slope())
                : phase;
    }

    @Override
    public PlanPhase work(Work it) {
        return it.match(new Course(phase));
    }

    /** What was gained before is not in the record that the adjuster will get. */
    @Override
    public PlanPhase guard(Guard it) {
        if (it instanceof Guard.BegunAgain) {
            job.route().unsettled();
        }
        return phase;
    }

    @Override
    public PlanPhase request(Request it) {
        if (it instanceof Request.GeneratorFails fails) {
            job.feeding().fails(fails);
        } else if (it instanceof Request.GeneratorStands stands) {
            return job.feeding().stands(stands) ? phase.generatorBack() : phase;
        } else if (it instanceof Request.GeneratorChanged || it instanceof Request.GeneratorUnchanged) {
            job.feeding().changeIsOver();
        } else if (it instanceof Request.CutGenerator cut && job.feeding().turnsLevel()) {
            job.feeding()
                    .withinReach(cut.factor())
                    .ifPresent(factor -> job.order(new Order.Level(LevelCommand.cut(factor))));
        } else if (it instanceof Request.CheckDropped) {
            return phase.checkDropped();
        }
        return it instanceof Request.CheckOver ? phase.checkOver() : phase;
    }

    @Override
    public PlanPhase finding(Finding it) {
        return job.feeding().isAwaited() ? phase : it.match(this);
    }

    @Override
    public PlanPhase passed(Passed it) {
        return phase.verdict();
    }

    @Override
    public PlanPhase returned(Returned it) {
        return phase.verdict();
    }

    @Override
    public PlanPhase held(Held it) {
        return phase.held();
    }

    @Override
    public PlanPhase twoPeaks(TwoPeaks it) {
        return phase.twoPeaks(it);
    }

    @Override
    public PlanPhase noPeak(NoPeak it) {
        return phase.noPeak(it.reason());
    }

    @Override
    public PlanPhase hinted(Finding.Hinted it) {
        return phase;
    }

    @Override
    public PlanPhase furtherPast(Finding.FurtherPast it) {
        return phase;
    }
}
