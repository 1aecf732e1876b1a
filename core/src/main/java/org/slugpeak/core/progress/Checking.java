package org.slugpeak.core.progress;

import java.util.function.Function;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;

/**
 * The level watch carries out a check, and says when it is over.
 *
 * @param then where the work goes on
 */
record Checking(Job job, Function<Job, PlanPhase> then) implements PlanPhase {

    static Checking begin(Job job, CheckKind kind, Function<Job, PlanPhase> then) {
        job.order(new Order.Level(LevelCommand.check(kind)));
        return new Checking(job, then);
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
