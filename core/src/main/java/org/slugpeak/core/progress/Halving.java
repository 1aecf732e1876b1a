package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Guard;

/**
 * Whether the reading follows the generator. Where it does not, the check itself has left the generator lower, and is made once more
 * there; where it still does not, gain control is to be clamped, and it is made a last time. What a limiter holds is halved again and
 * again instead, until it follows: a clamp changes nothing there.
 *
 * @param failures how often it has not followed
 * @param found what the check under way has found
 */
record Halving(Job job, int failures, Found found) implements PlanPhase {

    /** What a check has found. */
    enum Found {
        NOTHING,
        FLATTENED,
        LIMITED
    }

    /** Each leaves half of the signal: so far above its limit nobody feeds a set twice. */
    private static final int MOST_WHILE_LIMITED = 8;

    static Halving first(Job job) {
        return begin(job, 0);
    }

    private static Halving begin(Job job, int failures) {
        job.order(new Order.Level(LevelCommand.check(CheckKind.LEVEL)));
        return new Halving(job, failures, Found.NOTHING);
    }

    @Override
    public PlanPhase flattened(double slope) {
        return new Halving(job, failures, CheckFigures.isLimited(slope) ? Found.LIMITED : Found.FLATTENED);
    }

    @Override
    public PlanPhase checkOver() {
        return switch (found) {
            case NOTHING -> Settling.again(job);
            case LIMITED -> failures < MOST_WHILE_LIMITED ? begin(job, failures + 1) : Settling.again(job);
            case FLATTENED ->
                switch (failures) {
                    case 0 -> begin(job, 1);
                    case 1 -> clamped(job);
                    default -> Settling.again(job);
                };
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
