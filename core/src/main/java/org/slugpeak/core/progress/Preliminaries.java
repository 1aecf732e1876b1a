package org.slugpeak.core.progress;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;

/**
 * What is measured between setting up and turning, where it is wanted: the resting reading at each new meter point, at the beginning
 * of each stage whether the reading follows the generator, and once at each meter point what its detector makes of known steps of the
 * generator, after it was seen that nothing flattens them. One thread at a time.
 */
final class Preliminaries {

    private boolean restWanted;
    private boolean halvingsWanted;
    private boolean lawWanted;
    private Optional<String> restedAt = Optional.empty();
    private Optional<String> halvedIn = Optional.empty();
    private final Set<String> lawsOf = new HashSet<>();
    private Optional<Setup> levelledFor = Optional.empty();

    void wantRest() {
        restWanted = true;
    }

    void wantHalvings() {
        halvingsWanted = true;
    }

    void wantLaw() {
        lawWanted = true;
    }

    /** The next measurement for the step at hand, or its adjuster where there is none left. */
    PlanPhase next(Job job) {
        PlanStep step = job.route().step();
        Optional<String> point = Optional.of(step.setup().meterPoint());
        if (restWanted && step.goal().hasDecibels() && !restedAt.equals(point)) {
            restedAt = point;
            return Checking.begin(job, CheckKind.REST, Settling::again, this::unheard);
        }
        if (job.feeding().holdsLevel() && !levelledFor.equals(Optional.of(step.setup()))) {
            levelledFor = Optional.of(step.setup());
            return Levelling.begin(job);
        }
        Optional<String> stage = Optional.of(job.route().stage().name());
        boolean follows = isWorthHalving(step, job.lastSecond().mean());
        if (halvingsWanted && !halvedIn.equals(stage) && follows) {
            halvedIn = stage;
            levelledFor = Optional.empty(); // where the reading did not follow at once, the level is lower afterwards
            return Halving.first(job);
        }
        if (lawWanted && follows && lawsOf.add(step.setup().meterPoint())) {
            return Raising.thenLaw(job);
        }
        return AtAdjuster.begin(job);
    }

    /** Nothing is heard of the generator yet, so that there is nothing to measure before the adjuster at hand has found it. */
    private PlanPhase unheard(Job job) {
        restedAt = Optional.empty();
        return AtAdjuster.begin(job);
    }

    /** What is smaller than the plan's window is far from flattening anything, and would end in the noise. */
    private static boolean isWorthHalving(PlanStep step, double reading) {
        boolean fed = step.setup().generatorHz().isPresent();
        double leastReading = step.setup().level().map(it -> it.low()).orElse(0.0);
        return fed && step.goal().seek().seeksStrongest() && Math.abs(reading) >= leastReading;
    }
}
