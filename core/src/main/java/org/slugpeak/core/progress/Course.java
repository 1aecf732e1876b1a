package org.slugpeak.core.progress;

import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Work;

/**
 * What the course of the work means for a phase, whether it takes its course now or a log tells of it.
 *
 * @param phase the present one
 */
record Course(Phase phase) implements Work.Matcher<Phase> {

    @Override
    public Phase adjuster(Adjuster it) {
        return phase.adjuster(it);
    }

    @Override
    public Phase planBegun(Work.PlanBegun it) {
        return phase.begun();
    }

    @Override
    public Phase handEffect(Work.HandEffect it) {
        return phase;
    }

    @Override
    public Phase swept(Work.Swept it) {
        return phase;
    }

    @Override
    public Phase roundEnded(Work.RoundEnded it) {
        return phase;
    }

    @Override
    public Phase wentBack(Work.WentBack it) {
        return phase.wentBack();
    }

    @Override
    public Phase planOver(Work.PlanOver it) {
        return phase;
    }

    @Override
    public Phase dialNoted(Work.DialNoted it) {
        return phase;
    }

    @Override
    public Phase nothingToTakeBack(Work.NothingToTakeBack it) {
        return phase;
    }
}
