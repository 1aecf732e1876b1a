package org.slugpeak.core.progress;

import java.util.function.Function;
import org.slugpeak.core.session.ReadingTaken;

/**
 * A hand is in the set for something that no adjuster is: there is none to leave or to go back from.
 *
 * @param watch tells when the hand is out of the set again
 * @param then where the work goes on
 * @param skipped where it goes on when the user leaves it
 */
record AwaitingHand(Job job, SettlingWatch watch, Function<Job, PlanPhase> then, Function<Job, PlanPhase> skipped)
        implements PlanPhase {

    /** From now on; the hand has been asked for just before. */
    static AwaitingHand begin(Job job, Function<Job, PlanPhase> then, Function<Job, PlanPhase> skipped) {
        SettlingWatch watch = new SettlingWatch(job.nowNanos(), job.lastSecond().mean(), true, true);
        return new AwaitingHand(job, watch, then, skipped);
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        boolean seeksZero = job.route().step().goal().seek().signCounts();
        return watch.isDone(job.nowNanos(), it.smoothed(), seeksZero) ? next() : this;
    }

    @Override
    public PlanPhase next() {
        return then.apply(job);
    }

    @Override
    public PlanPhase skip() {
        return skipped.apply(job);
    }
}
