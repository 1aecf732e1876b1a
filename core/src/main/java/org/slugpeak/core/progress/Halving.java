package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Guard;

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
            case 1 -> clamped(job);
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

    /** Nothing in the reading tells when the line is held, but that the set was off and is back. */
    private static PlanPhase clamped(Job job) {
        job.say(Guard.ClampGainControl::new);
        return AwaitingHand.begin(
                job, it -> begin(it, 2), it -> it.preliminaries().next(it));
    }
}
