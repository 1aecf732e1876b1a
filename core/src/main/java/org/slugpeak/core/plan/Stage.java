package org.slugpeak.core.plan;

import java.util.List;
import org.slugpeak.core.scale.DialScale;

/**
 * Steps that are repeated together; refused with an {@link IllegalArgumentException} without steps. Immutable; any thread may
 * use it.
 *
 * @param name for example {@code AM IF}
 * @param steps in order
 * @param repeat when it is done
 * @param response over what its response is judged then
 */
public record Stage(String name, List<PlanStep> steps, RepeatRule repeat, Response response) {

    public Stage {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("stage " + name + " has no steps");
        }
    }

    /**
     * One of whose response nothing is said.
     *
     * @param name for example {@code AM IF}
     * @param steps in order
     * @param repeat when it is done
     */
    public Stage(String name, List<PlanStep> steps, RepeatRule repeat) {
        this(name, steps, repeat, Response.USUAL);
    }

    /**
     * Whether what its steps gain adds up to one figure.
     *
     * @return false where their signals go different ways, or none of them seeks what has decibels
     */
    public boolean addsUp() {
        return SignalPath.isOneThrough(this);
    }

    /**
     * The same with another limit.
     *
     * @param limitDb done when a whole round changes less than this, dB, positive
     * @return a copy
     */
    public Stage repeatedUntil(double limitDb) {
        return new Stage(name, steps, new RepeatRule(limitDb, repeat.mostRounds()), response);
    }

    /** The same with what the generator's dial has to be set to. */
    Stage marked(DialScale scale) {
        return new Stage(name, steps.stream().map(step -> step.marked(scale)).toList(), repeat, response);
    }

    /** The same where every step says what stands on the gain control line: free where it said nothing. */
    Stage withAvcSaid() {
        List<PlanStep> said = steps.stream()
                .map(step -> step.setup().particulars().avc().isPresent() ? step : step.withAvc(AvcLine.FREE))
                .toList();
        return new Stage(name, said, repeat, response);
    }
}
