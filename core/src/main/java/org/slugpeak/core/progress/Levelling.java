package org.slugpeak.core.progress;

import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.ReadingTaken;

/**
 * The generator brings the reading into its window before anything is judged by it.
 *
 * @param sinceNanos when that began, nanoseconds from the first reading
 */
record Levelling(Job job, long sinceNanos) implements PlanPhase {

    /** Six changes of the level, each waited for; what has not come into the window by then has too little or too much signal. */
    private static final long PATIENCE_NANOS = 30_000_000_000L;

    static Levelling begin(Job job) {
        return new Levelling(job, job.nowNanos());
    }

    @Override
    public boolean isLevelled() {
        return true;
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        Feeding feeding = job.feeding();
        if (feeding.isInside()) {
            return next();
        }
        boolean patient = job.nowNanos() - sinceNanos >= PATIENCE_NANOS;
        return patient || feeding.isHelpless() ? missed(it) : this;
    }

    private PlanPhase missed(ReadingTaken it) {
        Setup setup = job.route().step().setup();
        double aboveVolts = Math.abs(job.scale().aboveRest(it.smoothed()));
        double overDb = Decibels.of(aboveVolts / setup.highVolts());
        double missedDb = overDb > 0 ? overDb : Math.min(0, Decibels.of(aboveVolts / setup.lowVolts()));
        if (missedDb != 0) {
            job.say(at -> new Caution.WindowMissed(at, missedDb));
        }
        return next();
    }

    @Override
    public PlanPhase next() {
        return job.preliminaries().next(job);
    }

    @Override
    public PlanPhase skip() {
        return next();
    }
}
