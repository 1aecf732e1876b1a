package org.slugpeak.core.progress;

import java.util.function.Function;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Request;

/**
 * The level watch carries out a check, and says when it is over.
 *
 * @param then where the work goes on
 * @param ifDropped where it goes on if nothing changed when it should
 */
record Checking(Job job, Function<Job, PlanPhase> then, Function<Job, PlanPhase> ifDropped) implements PlanPhase {

    static Checking begin(Job job, CheckKind kind, Function<Job, PlanPhase> then) {
        return begin(job, kind, then, then);
    }

    static Checking begin(Job job, CheckKind kind, Function<Job, PlanPhase> then, Function<Job, PlanPhase> ifDropped) {
        job.order(new Order.Level(LevelCommand.check(kind)));
        return new Checking(job, then, ifDropped);
    }

    /** The skirts, at once, or where a damping resistor is fitted when it is off again. */
    static PlanPhase skirts(Job job) {
        return job.connections()
                .undamp()
                .<PlanPhase>map(damping -> {
                    job.say(at -> new Request.Undamp(at, damping));
                    return AwaitingHand.begin(job, Checking::undampedSkirts, Checking::undampedSkirts);
                })
                .orElseGet(() -> undampedSkirts(job));
    }

    private static Checking undampedSkirts(Job job) {
        return begin(job, CheckKind.SKIRTS, Settling::next);
    }

    @Override
    public PlanPhase checkDropped() {
        return new Checking(job, ifDropped, ifDropped);
    }

    @Override
    public PlanPhase checkOver() {
        return then.apply(job);
    }

    @Override
    public PlanPhase next() {
        job.order(new Order.Level(LevelCommand.done()));
        return this;
    }

    @Override
    public PlanPhase skip() {
        job.order(new Order.Level(LevelCommand.cancel()));
        return then.apply(job);
    }
}
