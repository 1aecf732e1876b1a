package org.slugpeak.core.progress;

import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/** An adjuster is begun, and its end is not ordered yet: to the keys all of this is one. */
sealed interface AtAdjuster extends PlanPhase permits InHand, Choosing, HandsOff {

    /** What all phases share. */
    Job job();

    /** Begins the adjuster of the present step. */
    static InHand begin(Job job) {
        PlanStep step = job.route().step();
        job.tellPath();
        job.order(new Order.Begin(step.adjuster(), step.goal().seek()));
        job.say(at -> new Request.Turn(at, step));
        return step.rock() ? Rocking.begin(job) : Turning.begin(job);
    }

    @Override
    default boolean isLevelled() {
        return true;
    }

    @Override
    default PlanPhase generatorBack() {
        job().say(Guard.BegunAgain::new);
        return Settling.again(job());
    }

    /** Its best so far counts no more. */
    default PlanPhase beginAgain() {
        job().say(Guard.BegunAgain::new);
        return begin(job());
    }

    @Override
    default PlanPhase next() {
        return Ending.order(job(), Adjuster.Action.DONE);
    }

    @Override
    default PlanPhase skip() {
        return Ending.order(job(), Adjuster.Action.SKIP);
    }

    @Override
    default PlanPhase back() {
        job().say(Work.WentBack::new);
        return skip();
    }
}
