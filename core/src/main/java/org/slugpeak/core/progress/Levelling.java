package org.slugpeak.core.progress;

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
        boolean patient = job.nowNanos() - sinceNanos >= PATIENCE_NANOS;
        return job.feeding().isInside() || patient ? next() : this;
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
