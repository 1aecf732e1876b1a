package org.slugpeak.core.plan;

import java.util.List;

/**
 * The alignment of one set, from the intermediate frequency to the aerial. The maker's own procedure outranks any plan.
 * Refused with an {@link IllegalArgumentException} without stages. Immutable; any thread may use it.
 *
 * @param name of the set
 * @param chassis what it is tied to
 * @param valves type numbers and what they do
 * @param intermediatesHz intermediate frequencies, Hz
 * @param bands tuning ranges
 * @param stages in order
 * @param notes the plan's own words
 */
public record Plan(
        String name,
        Chassis chassis,
        List<String> valves,
        List<Double> intermediatesHz,
        List<Band> bands,
        List<Stage> stages,
        List<String> notes) {

    public Plan {
        valves = List.copyOf(valves);
        intermediatesHz = List.copyOf(intermediatesHz);
        bands = List.copyOf(bands);
        stages = List.copyOf(stages);
        notes = List.copyOf(notes);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("plan " + name + " has no stages");
        }
    }

    /**
     * The same with other stages.
     *
     * @param others in order, one or more
     * @return a copy
     */
    public Plan withStages(List<Stage> others) {
        return new Plan(name, chassis, valves, intermediatesHz, bands, others, notes);
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
