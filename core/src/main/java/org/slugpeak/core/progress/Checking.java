package org.slugpeak.core.progress;

import java.util.function.Function;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;

/**
 * The level watch carries out a check, and says when it is over.
 *
 * @param then where the work goes on
 */
record Checking(Job job, Function<Job, Phase> then) implements Phase {

    static Checking begin(Job job, CheckKind kind, Function<Job, Phase> then) {
        job.order(new Order.Level(LevelCommand.check(kind)));
        return new Checking(job, then);
    }

    @Override
    public Phase checkOver() {
        return then.apply(job);
    }

    @Override
    public Phase next() {
        job.order(new Order.Level(LevelCommand.done()));
        return this;
    }

    @Override
    public Phase skip() {
        job.order(new Order.Level(LevelCommand.cancel()));
        return then.apply(job);
    }
}
