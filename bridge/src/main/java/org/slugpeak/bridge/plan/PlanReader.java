package org.slugpeak.bridge.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Response;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

/** Makes a plan of a text. Immutable; any thread may use it. */
final class PlanReader {

    private static final int MOST_ROUNDS = 50;

    private final String file;
    private final OptionalDouble intermediateHz;

    PlanReader(String file, OptionalDouble intermediateHz) {
        this.file = file;
        this.intermediateHz = intermediateHz;
    }

    Plan read(String text) throws BadConfiguration {
        return TomlFile.read(file, "plan", text, this::plan).orElseThrow();
    }

    /** Empty only where mistakes have been noted, so that nobody sees it. */
    private Optional<Plan> plan(Section top) {
        String name = top.requiredText("name");
        List<IntermediateFrequency> intermediates = new IntermediatesReader(intermediateHz).read(top);
        Chassis chassis = top.choice("chassis", Words.CHASSIS, Chassis.UNKNOWN);
        List<Band> bands =
                top.tables("band").stream().flatMap(each -> band(each).stream()).toList();
        List<String> valves = top.texts("valves", List.of());
        List<String> notes = top.texts("notes", List.of());
        StepReader steps = new StepReader(new SetupReader(intermediates, bands));
        List<Stage> stages = new ArrayList<>();
        for (Section each : top.tables("stage")) {
            stage(each, steps).ifPresent(stages::add);
        }
        if (!top.has("stage")) {
            top.problem("stage", "a plan needs at least one [[stage]] with its adjusters");
        }
        steps.refusePointsOfSomeSteps();
        return stages.isEmpty()
                ? Optional.empty()
                : Optional.of(new Plan(name, chassis, valves, intermediates, bands, stages, notes));
    }

    private static Optional<Band> band(Section section) {
        try (section) {
            String name = section.requiredText("name");
            OptionalDouble low = section.positive("from-kHz");
            OptionalDouble high = section.positive("to-kHz");
            Optional<OscillatorSide> oscillator = section.has("oscillator")
                    ? Optional.of(section.choice("oscillator", Words.SIDES, OscillatorSide.ABOVE))
                    : Optional.empty();
            TuningElement tuning = section.choice("tuning", Words.TUNINGS, TuningElement.CAPACITOR);
            if (low.isEmpty() || high.isEmpty() || low.getAsDouble() >= high.getAsDouble()) {
                section.problem("from-kHz", "a band needs from-kHz and to-kHz, the lower first");
                return Optional.empty();
            }
            return Optional.of(new Band(name, low.getAsDouble() * 1e3, high.getAsDouble() * 1e3, oscillator, tuning));
        }
    }

    private static Optional<Stage> stage(Section section, StepReader reader) {
        try (section) {
            String name = section.requiredText("name");
            RepeatRule repeat = repeat(section);
            List<PlanStep> steps = reader.steps(section);
            Response response = response(section, steps);
            return steps.isEmpty() ? Optional.empty() : Optional.of(new Stage(name, steps, repeat, response));
        }
    }

    private static Response response(Section section, List<PlanStep> steps) {
        OptionalDouble skirt = section.positive("skirts-kHz");
        OptionalDouble span = section.positive("span-kHz");
        boolean judged = steps.stream().anyMatch(step -> step.acceptance() == Acceptance.SKIRTS);
        if (skirt.isPresent() && !judged) {
            section.problem("skirts-kHz", "'skirts-kHz' says nothing where no step has accept = \"skirts\"");
        }
        if (skirt.isPresent() && span.isPresent() && span.getAsDouble() < 2 * skirt.getAsDouble()) {
            section.problem(
                    "span-kHz",
                    "'span-kHz' must hold both skirts: at least " + WrittenNumber.of(2 * skirt.getAsDouble()) + ", not "
                            + WrittenNumber.of(span.getAsDouble()));
        }
        boolean middleKnown =
                steps.isEmpty() || steps.get(0).setup().generatorHz().isPresent();
        if (span.isPresent() && !middleKnown) {
            section.problem("span-kHz", "'span-kHz' needs 'generator-kHz' at the first adjuster: there is its middle");
        }
        return new Response(SetupReader.hertz(skirt), SetupReader.hertz(span));
    }

    private static RepeatRule repeat(Section section) {
        RepeatRule usual = RepeatRule.USUAL;
        double belowDb = section.positive("repeat-below-dB").orElse(usual.belowDb());
        return new RepeatRule(belowDb, section.whole("most-rounds", 1, MOST_ROUNDS, usual.mostRounds()));
    }
}
