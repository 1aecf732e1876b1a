package org.slugpeak.core.plan;

import java.util.List;

/**
 * Steps that are repeated together; refused with an {@link IllegalArgumentException} without steps. Immutable; any thread may
 * use it.
 *
 * @param name for example {@code AM IF}
 * @param steps in order
 * @param repeat when it is done
 */
public record Stage(String name, List<PlanStep> steps, RepeatRule repeat) {

    public Stage {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("stage " + name + " has no steps");
        }
    }

    /**
     * The same with another limit.
     *
     * @param limitDb done when a whole round changes less than this, dB, positive
     * @return a copy
     */
    public Stage repeatedUntil(double limitDb) {
        return new Stage(name, steps, new RepeatRule(limitDb, repeat.mostRounds()));
    }
}
