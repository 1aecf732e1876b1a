package org.slugpeak.core.progress;

import org.slugpeak.core.session.Adjuster;

/**
 * A log tells what was done: every end of an adjuster in it was ordered.
 *
 * @param ending what the next end leads to
 */
record Resuming(Ending ending) implements PlanPhase {

    static Resuming from(Job job) {
        return new Resuming(new Ending(job, false));
    }

    /** What the session before had begun and not ended is begun anew. */
    @Override
    public PlanPhase begun() {
        return from(ending.job());
    }

    @Override
    public PlanPhase wentBack() {
        return new Resuming(ending.wentBack());
    }

    @Override
    public PlanPhase adjuster(Adjuster it) {
        return ending.adjuster(it).equals(ending) ? this : from(ending.job());
    }
}
