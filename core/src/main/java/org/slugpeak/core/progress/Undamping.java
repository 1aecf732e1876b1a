package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;

/**
 * A damping resistor comes off before the skirts are compared; there is no adjuster to leave or to go back from.
 *
 * @param watch tells when the hand is out of the set again
 */
record Undamping(Job job, SettlingWatch watch) implements PlanPhase {

    /** Goes to the skirts, at once where no resistor is in the way. */
    static PlanPhase orSkirts(Job job) {
        return job.connections()
                .undamp()
                .<PlanPhase>map(damping -> {
                    job.say(at -> new Request.Undamp(at, damping));
                    double level = job.lastSecond().mean();
                    return new Undamping(job, new SettlingWatch(job.nowNanos(), level, true, true));
                })
                .orElseGet(() -> Checking.begin(job, CheckKind.SKIRTS, Settling::next));
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        boolean seeksZero = job.route().step().goal().seek().signCounts();
        return watch.isDone(job.nowNanos(), it.smoothed(), seeksZero) ? next() : this;
    }

    @Override
    public PlanPhase next() {
        return Checking.begin(job, CheckKind.SKIRTS, Settling::next);
    }

    @Override
    public PlanPhase skip() {
        return next();
    }
}
