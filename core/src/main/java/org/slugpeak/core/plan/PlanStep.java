package org.slugpeak.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.receiver.Superhet;
import org.slugpeak.core.scale.DialScale;

/**
 * One adjuster, and how it is set. Immutable; any thread may use it.
 *
 * @param adjuster as it is named on the set
 * @param goal what it is turned for
 * @param setup how generator, set and meter stand
 * @param rock whether the gang is swept to and fro across the signal meanwhile
 * @param damping resistor across the partner winding
 * @param acceptance by what it is judged
 * @param provesImage whether it is proved, once it is set, that the signal is met and not its image
 * @param notes the plan's own words
 */
public record PlanStep(
        String adjuster,
        Goal goal,
        Setup setup,
        boolean rock,
        Optional<Damping> damping,
        Acceptance acceptance,
        boolean provesImage,
        List<String> notes) {

    public PlanStep {
        notes = List.copyOf(notes);
    }

    /**
     * One that proves nothing.
     *
     * @param adjuster as it is named on the set
     * @param goal what it is turned for
     * @param setup how generator, set and meter stand
     * @param rock whether the gang is swept to and fro across the signal meanwhile
     * @param damping resistor across the partner winding
     * @param acceptance by what it is judged
     * @param notes the plan's own words
     */
    public PlanStep(
            String adjuster,
            Goal goal,
            Setup setup,
            boolean rock,
            Optional<Damping> damping,
            Acceptance acceptance,
            List<String> notes) {
        this(adjuster, goal, setup, rock, damping, acceptance, false, notes);
    }

    /**
     * The same for another adjuster.
     *
     * @param name of the other
     * @return a copy
     */
    public PlanStep withAdjuster(String name) {
        return new PlanStep(name, goal, setup, rock, damping, acceptance, provesImage, notes);
    }

    /**
     * Where the oscillator runs, as far as the plan says.
     *
     * @return empty where it names no band, or does not say it of the band
     */
    public Optional<OscillatorSide> oscillator() {
        return setup.particulars().band().flatMap(Band::oscillator);
    }

    /**
     * Where on the dial the generator is met a second time, as an image.
     *
     * @return Hz; empty where the plan does not say enough, or where there is no such place above zero
     */
    public OptionalDouble imageDialHz() {
        Optional<IntermediateFrequency> intermediate = setup.particulars().intermediate();
        if (oscillator().isEmpty()
                || intermediate.isEmpty()
                || setup.generatorHz().isEmpty()) {
            return OptionalDouble.empty();
        }
        Superhet set = new Superhet(intermediate.get().hz(), oscillator().get());
        double dialHz = set.imageDialHz(setup.generatorHz().getAsDouble());
        return dialHz > 0 ? OptionalDouble.of(dialHz) : OptionalDouble.empty();
    }

    /**
     * The same with what the generator's dial has to be set to.
     *
     * @param scale how that dial errs
     * @return a copy
     */
    PlanStep marked(DialScale scale) {
        return new PlanStep(adjuster, goal, setup.marked(scale), rock, damping, acceptance, provesImage, notes);
    }

    /**
     * The same with something said of the gain control line.
     *
     * @param line what stands on it
     * @return a copy
     */
    PlanStep withAvc(AvcLine line) {
        return new PlanStep(adjuster, goal, setup.withAvc(line), rock, damping, acceptance, provesImage, notes);
    }
}
