package org.slugpeak.core.progress;

import java.util.Optional;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/**
 * Generator, dial, leads and damping are to be as the step wants them.
 *
 * @param watch tells when they are; empty until the first reading, before which nothing is asked for
 */
record Settling(Job job, Optional<SettlingWatch> watch) implements PlanPhase {

    /** Goes on where the route leads: to the next step, or to the end of the plan. */
    static PlanPhase next(Job job) {
        return job.route().isOver() ? Over.tell(job) : new Settling(job, Optional.empty());
    }

    /** The generator is put back after a check: the reading has to stand before anything is turned or measured. */
    static PlanPhase again(Job job) {
        return new Settling(
                job,
                Optional.of(new SettlingWatch(job.nowNanos(), job.lastSecond().mean(), false, false)));
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        if (watch.isEmpty()) {
            return ask(it.smoothed()).reading(it);
        }
        boolean seeksZero = job.route().step().goal().seek().signCounts();
        return watch.get().isDone(job.nowNanos(), it.smoothed(), seeksZero)
                ? job.preliminaries().next(job)
                : this;
    }

    private Settling ask(double level) {
        PlanStep step = job.route().step();
        Setup byHand = job.feeding().leftToHand(step.setup());
        boolean differs = job.connections().changesFor(byHand);
        Preparation preparation = job.connections().goTo(byHand, step.damping());
        if (job.feeding().feed(step)) {
            job.order(new Order.Feed(step.setup()));
        }
        boolean handInSet = preparation.isAtTerminals();
        if (!preparation.isNothing()) {
            job.say(at -> new Request.SetUp(at, preparation));
        }
        return new Settling(
                job, Optional.of(new SettlingWatch(job.nowNanos(), level, differs || handInSet, handInSet)));
    }

    @Override
    public PlanPhase next() {
        return job.preliminaries().next(job);
    }

    @Override
    public PlanPhase skip() {
        return AtAdjuster.begin(job).skip();
    }

    @Override
    public PlanPhase back() {
        job.say(Work.WentBack::new);
        return skip();
    }
}
