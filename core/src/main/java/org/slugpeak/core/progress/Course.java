package org.slugpeak.core.progress;

import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Work;

/**
 * What the course of the work means for a phase, whether it takes its course now or a log tells of it.
 *
 * @param phase the present one
 */
record Course(PlanPhase phase) implements Work.Matcher<PlanPhase> {

    @Override
    public PlanPhase adjuster(Adjuster it) {
        return phase.adjuster(it);
    }

    @Override
    public PlanPhase planBegun(Work.PlanBegun it) {
        return phase.begun();
    }

    @Override
    public PlanPhase pathBegun(Work.PathBegun it) {
        return phase;
    }

    @Override
    public PlanPhase handEffect(Work.HandEffect it) {
        return phase;
    }

    @Override
    public PlanPhase swept(Work.Swept it) {
        return phase;
    }

    @Override
    public PlanPhase roundEnded(Work.RoundEnded it) {
        return phase;
    }

    @Override
    public PlanPhase wentBack(Work.WentBack it) {
        return phase.wentBack();
    }

    @Override
    public PlanPhase planOver(Work.PlanOver it) {
        return phase;
    }

    @Override
    public PlanPhase dialNoted(Work.DialNoted it) {
        return phase;
    }

    @Override
    public PlanPhase nothingToTakeBack(Work.NothingToTakeBack it) {
        return phase;
    }
}
