package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.ReadingTaken;

/**
 * Whether the reading follows the generator. Where it does not, the check itself has left the generator lower, and is made once more
 * there; where it still does not, gain control is to be clamped, and it is made a last time.
 *
 * @param failures how often it has not followed
 * @param failed whether it does not follow in the check under way
 */
record Halving(Job job, int failures, boolean failed) implements PlanPhase {

    static Halving first(Job job) {
        return begin(job, 0);
    }

    private static Halving begin(Job job, int failures) {
        job.order(new Order.Level(LevelCommand.check(CheckKind.LEVEL)));
        return new Halving(job, failures, false);
    }

    @Override
    public PlanPhase flattened() {
        return new Halving(job, failures, true);
    }

    @Override
    public PlanPhase checkOver() {
        if (!failed) {
            return Settling.again(job);
        }
        return switch (failures) {
            case 0 -> begin(job, 1);
            case 1 -> Clamping.ask(job);
            default -> Settling.again(job);
        };
    }

    @Override
    public PlanPhase next() {
        job.order(new Order.Level(LevelCommand.done()));
        return this;
    }

    @Override
    public PlanPhase skip() {
        job.order(new Order.Level(LevelCommand.cancel()));
        return job.preliminaries().next(job);
    }

    /**
     * The gain control line is being clamped; nothing in the reading tells when it is, but that the set was off and is back.
     *
     * @param watch tells when the hand is out of the set again
     */
    record Clamping(Job job, SettlingWatch watch) implements PlanPhase {

        static Clamping ask(Job job) {
            job.say(Guard.ClampGainControl::new);
            return new Clamping(
                    job, new SettlingWatch(job.nowNanos(), job.lastSecond().mean(), true, true));
        }

        @Override
        public PlanPhase reading(ReadingTaken it) {
            return watch.isDone(job.nowNanos(), it.smoothed(), false) ? next() : this;
        }

        @Override
        public PlanPhase next() {
            return begin(job, 2);
        }

        @Override
        public PlanPhase skip() {
            return job.preliminaries().next(job);
        }
    }
}
