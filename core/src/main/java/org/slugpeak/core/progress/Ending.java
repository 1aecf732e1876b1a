package org.slugpeak.core.progress;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Work;

/**
 * The end of an adjuster is ordered, and its record is waited for.
 *
 * @param leadsBack to the step before, rather than on
 */
record Ending(Job job, boolean leadsBack) implements PlanPhase {

    static Ending order(Job job, Adjuster.Action action) {
        job.order(new Order.End(action, OptionalDouble.empty()));
        return new Ending(job, false);
    }

    /** Of a gang that is swept a single reading before and after tells nothing. */
    static Ending swept(Job job, double gainDb) {
        job.order(new Order.End(Adjuster.Action.DONE, OptionalDouble.of(gainDb)));
        return new Ending(job, false);
    }

    @Override
    public Ending wentBack() {
        return new Ending(job, true);
    }

    @Override
    public PlanPhase adjuster(Adjuster it) {
        if (it.action() == Adjuster.Action.BEGIN || job.route().isOver()) {
            return this;
        }
        if (leadsBack) {
            job.route().back();
            return Settling.next(job);
        }
        Optional<Route.RoundEnd> roundEnd = advance(it);
        roundEnd.ifPresent(this::tell);
        return roundEnd.filter(Route.RoundEnd::wantsSkirts).isPresent() ? Checking.skirts(job) : Settling.next(job);
    }

    private Optional<Route.RoundEnd> advance(Adjuster it) {
        Route route = job.route();
        PlanStep step = route.step();
        int round = route.here().round();
        double gainDb = it.action() == Adjuster.Action.DONE ? step.goal().gainDb(it.gainDb()) : 0;
        if (job.coupling().ended(route.stage(), step, round, it.action(), gainDb)) {
            job.say(at -> new Guard.LateGain(at, step.adjuster(), round, gainDb));
        }
        return route.advance(gainDb);
    }

    private void tell(Route.RoundEnd end) {
        job.say(at -> new Work.RoundEnded(at, end.stage(), end.round(), end.gainDb(), end.verdict()));
    }
}
