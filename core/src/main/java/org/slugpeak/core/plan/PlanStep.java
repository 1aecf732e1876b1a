package org.slugpeak.core.plan;

import java.util.List;
import java.util.Optional;

/**
 * One adjuster, and how it is set. Immutable; any thread may use it.
 *
 * @param adjuster as it is named on the set
 * @param goal what it is turned for
 * @param setup how generator, set and meter stand
 * @param rock whether the gang is swept to and fro across the signal meanwhile
 * @param damping resistor across the partner winding
 * @param acceptance by what it is judged
 * @param notes the plan's own words
 */
public record PlanStep(
        String adjuster,
        Goal goal,
        Setup setup,
        boolean rock,
        Optional<Damping> damping,
        Acceptance acceptance,
        List<String> notes) {

    public PlanStep {
        notes = List.copyOf(notes);
    }

    /**
     * The same for another adjuster.
     *
     * @param name of the other
     * @return a copy
     */
    public PlanStep withAdjuster(String name) {
        return new PlanStep(name, goal, setup, rock, damping, acceptance, notes);
    }
}
