package org.slugpeak.core.progress;

import org.slugpeak.core.session.Work;

/** The plan is through, and nothing moves it any more. */
record Over() implements PlanPhase {

    static Over tell(Job job) {
        job.say(Work.PlanOver::new);
        job.order(new Order.Finish());
        return new Over();
    }
}
