package org.slugpeak.core.plan;

import java.util.List;
import org.slugpeak.core.scale.DialScale;

/**
 * The alignment of one set, from the intermediate frequency to the aerial. The maker's own procedure outranks any plan.
 * Refused with an {@link IllegalArgumentException} without stages. Immutable; any thread may use it.
 *
 * @param name of the set
 * @param chassis what it is tied to
 * @param valves type numbers and what they do
 * @param intermediates intermediate frequencies, in the order of the plan
 * @param bands tuning ranges
 * @param stages in order
 * @param notes the plan's own words
 */
public record Plan(
        String name,
        Chassis chassis,
        List<String> valves,
        List<IntermediateFrequency> intermediates,
        List<Band> bands,
        List<Stage> stages,
        List<String> notes) {

    /** A first intermediate frequency lies at least so far below the signal (made up; keeps the image out of the aerial circuit). */
    private static final double BELOW_SIGNAL = 3;

    public Plan {
        valves = List.copyOf(valves);
        intermediates = List.copyOf(intermediates);
        bands = List.copyOf(bands);
        stages = avcSaid(stages);
        notes = List.copyOf(notes);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("plan " + name + " has no stages");
        }
    }

    /** Where a plan holds the gain control line, each other step says that the clamp is off, so that nobody leaves it on. */
    private static List<Stage> avcSaid(List<Stage> stages) {
        boolean held = stages.stream()
                .flatMap(stage -> stage.steps().stream())
                .anyMatch(step -> step.setup().particulars().avc().isPresent());
        return held ? stages.stream().map(Stage::withAvcSaid).toList() : List.copyOf(stages);
    }

    /**
     * The intermediate frequencies without their names.
     *
     * @return Hz, in the order of the plan
     */
    public List<Double> intermediatesHz() {
        return intermediates.stream().map(IntermediateFrequency::hz).toList();
    }

    /**
     * Every frequency that the generator is set to, as far as the plan alone tells it.
     *
     * @return Hz, each once, in the order of the steps
     */
    public List<Double> plannedHz() {
        return stages.stream()
                .flatMap(stage -> stage.steps().stream())
                .flatMap(step -> step.setup().plannedHz().stream().boxed())
                .distinct()
                .toList();
    }

    /**
     * The intermediate frequency that a signal is converted to, where a step does not name it: the highest one that the set can convert it
     * to at once, else the lowest there is.
     *
     * @param signalHz the signal, Hz
     * @return Hz
     */
    public double intermediateHz(double signalHz) {
        return intermediatesHz().stream()
                .filter(hz -> hz <= signalHz / BELOW_SIGNAL)
                .max(Double::compare)
                .orElseGet(() -> intermediatesHz().stream().min(Double::compare).orElseThrow());
    }

    /**
     * The same with what the dial of a generator has to be set to at each step for its frequency.
     *
     * @param scale how that dial errs
     * @return a copy; steps that lie outside of the known points stay as they are
     */
    public Plan marked(DialScale scale) {
        return withStages(stages.stream().map(stage -> stage.marked(scale)).toList());
    }

    /**
     * The same with other stages.
     *
     * @param others in order, one or more
     * @return a copy
     */
    public Plan withStages(List<Stage> others) {
        return new Plan(name, chassis, valves, intermediates, bands, others, notes);
    }

    /**
     * How many adjusters a single round of every stage sets.
     *
     * @return 1 or more
     */
    public int steps() {
        return stages.stream().mapToInt(stage -> stage.steps().size()).sum();
    }
}
