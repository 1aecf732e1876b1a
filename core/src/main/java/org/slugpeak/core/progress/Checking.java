package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;

/** The level watch carries out a check, and says when it is over. */
record Checking(Job job) implements Phase {

    static Checking begin(Job job, CheckKind kind) {
        job.order(new Order.Level(LevelCommand.check(kind)));
        return new Checking(job);
    }

    @Override
    public Phase checkOver() {
        return Settling.next(job);
    }

    @Override
    public Phase next() {
        job.order(new Order.Level(LevelCommand.done()));
        return this;
    }

    @Override
    public Phase skip() {
        job.order(new Order.Level(LevelCommand.cancel()));
        return Settling.next(job);
    }
}
