package org.slugpeak.core.progress;

import java.util.Optional;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.PlanStep;

/**
 * What is measured between setting up and turning, where it is wanted: the resting reading at each new meter point, and at the beginning
 * of each stage whether the reading follows the generator. One thread at a time.
 */
final class Preliminaries {

    private boolean restWanted;
    private boolean halvingsWanted;
    private Optional<String> restedAt = Optional.empty();
    private Optional<String> halvedIn = Optional.empty();

    void wantRest() {
        restWanted = true;
    }

    void wantHalvings() {
        halvingsWanted = true;
    }

    /** The next measurement for the step at hand, or its adjuster where there is none left. */
    PlanPhase next(Job job) {
        PlanStep step = job.route().step();
        Optional<String> point = Optional.of(step.setup().meterPoint());
        if (restWanted && step.goal().hasDecibels() && !restedAt.equals(point)) {
            restedAt = point;
            return Checking.begin(job, CheckKind.REST, Settling::again);
        }
        Optional<String> stage = Optional.of(job.route().stage().name());
        if (halvingsWanted
                && !halvedIn.equals(stage)
                && isWorthHalving(step, job.lastSecond().mean())) {
            halvedIn = stage;
            return Halving.first(job);
        }
        return AtAdjuster.begin(job);
    }

    /** What is smaller than the plan's window is far from flattening anything, and would end in the noise. */
    private static boolean isWorthHalving(PlanStep step, double reading) {
        boolean fed = step.setup().generatorHz().isPresent();
        double leastReading = step.setup().level().map(it -> it.low()).orElse(0.0);
        return fed && step.goal().seek().seeksStrongest() && Math.abs(reading) >= leastReading;
    }
}
