package org.slugpeak.bridge.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;

/** Makes steps of a stage: what a step does not say is what its stage says. Immutable; any thread may use it. */
final class StepReader {

    private final List<Double> intermediatesHz;

    StepReader(List<Double> intermediatesHz) {
        this.intermediatesHz = intermediatesHz;
    }

    List<PlanStep> steps(Section stage) {
        PlanStep common = step("", stage, Optional.empty());
        List<PlanStep> steps = new ArrayList<>();
        for (String adjuster : stage.texts("adjust", List.of())) {
            steps.add(common.withAdjuster(adjuster));
        }
        for (Section each : stage.tables("step")) {
            try (each) {
                steps.add(step(each.requiredText("adjust"), each, Optional.of(common)));
            }
        }
        if (steps.isEmpty()) {
            stage.problem("adjust", "a stage needs adjusters: adjust = [\"T2 top\", \"T2 bottom\"], or [[stage.step]]");
        }
        return steps;
    }

    private PlanStep step(String adjuster, Section section, Optional<PlanStep> common) {
        Setup setup = setup(section, common.map(PlanStep::setup));
        List<String> notes = section.texts("notes", common.map(PlanStep::notes).orElse(List.of()));
        Acceptance acceptance = section.choice(
                "accept", Words.ACCEPTANCES, common.map(PlanStep::acceptance).orElse(Acceptance.MAXIMUM));
        Optional<Damping> damping = damping(section, setup).or(() -> common.flatMap(PlanStep::damping));
        refuseMisleadingMaximum(section, acceptance, damping);
        return new PlanStep(
                adjuster,
                section.choice("seek", Words.GOALS, common.map(PlanStep::goal).orElse(Goal.PEAK)),
                setup,
                section.flag("rock", common.map(PlanStep::rock).orElse(false)),
                damping,
                acceptance,
                notes);
    }

    /** Peaking the slugs of an over-coupled transformer in turn ends on one hump, with more output than is right. */
    private static void refuseMisleadingMaximum(Section section, Acceptance acceptance, Optional<Damping> damping) {
        OptionalDouble kappa = section.positive("coupling");
        boolean overCoupled = kappa.isPresent() && kappa.getAsDouble() > 1;
        if (overCoupled && damping.isEmpty() && !section.has("damp") && acceptance == Acceptance.MAXIMUM) {
            section.problem(
                    "coupling",
                    "this transformer is over-coupled, so that its greatest output misleads: give 'damp' for the"
                            + " partner winding, or accept = \"skirts\"");
        }
    }

    private Setup setup(Section section, Optional<Setup> common) {
        OptionalDouble dialHz = hertz(section.positive("dial-kHz"));
        boolean dialGiven = dialHz.isPresent() || section.has("dial");
        return new Setup(
                generatorHz(section, common),
                text(section, "modulation", common.map(Setup::modulation)),
                text(section, "inject", common.map(Setup::injection)),
                text(section, "dummy", common.map(Setup::dummyAntenna)),
                dialGiven ? dialHz : common.map(Setup::dialHz).orElse(OptionalDouble.empty()),
                dialGiven
                        ? section.text("dial").orElse("")
                        : common.map(Setup::dial).orElse(""),
                text(section, "meter", common.map(Setup::meterPoint)),
                level(section).or(() -> common.flatMap(Setup::level)),
                highTension(section, common.map(Setup::highTension)));
    }

    /** What a stage says of its point says nothing of another one that a step names: that may stand at high tension again. */
    private static HighTension highTension(Section section, Optional<HighTension> common) {
        HighTension stage = common.orElse(HighTension.POSSIBLE);
        return new HighTension(
                section.flag("inject-ht", section.has("inject") || stage.atInjection()),
                section.flag("meter-ht", section.has("meter") || stage.atMeter()));
    }

    private static String text(Section section, String key, Optional<String> common) {
        return section.text(key).or(() -> common).orElse("");
    }

    private OptionalDouble generatorHz(Section section, Optional<Setup> common) {
        if (section.is("generator-kHz", "IF")) {
            if (intermediatesHz.size() != 1) {
                section.problem("generator-kHz", "\"IF\" is clear only in a plan with one 'if-kHz': give the number");
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(intermediatesHz.get(0));
        }
        return section.has("generator-kHz")
                ? hertz(section.positive("generator-kHz"))
                : common.map(Setup::generatorHz).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble hertz(OptionalDouble kHz) {
        return kHz.isPresent() ? OptionalDouble.of(kHz.getAsDouble() * 1e3) : kHz;
    }

    private static Optional<LevelRange> level(Section section) {
        String unit = section.text("level-unit").orElse("V");
        List<Double> ends = section.numbers("level");
        if (!section.has("level") || ends.isEmpty()) {
            return Optional.empty();
        }
        if (ends.size() != 2 || !(0 < ends.get(0) && ends.get(0) < ends.get(1))) {
            section.problem("level", "'level' must be two numbers above zero, the lower first: [0.5, 1.5]");
            return Optional.empty();
        }
        return Optional.of(new LevelRange(ends.get(0), ends.get(1), unit));
    }

    private static Optional<Damping> damping(Section section, Setup setup) {
        Optional<String> winding = section.text("damp");
        OptionalDouble ohms = section.positive("damp-ohm");
        OptionalDouble q = section.positive("q");
        OptionalDouble kappa = section.positive("coupling");
        OptionalDouble picofarad = section.positive("tank-pF");
        boolean highTension = section.flag("damp-ht", true);
        if (winding.isEmpty()) {
            for (String key : List.of("damp-ohm", "damp-ht")) {
                if (section.has(key)) {
                    section.problem(key, "'" + key + "' says nothing without 'damp', the winding that it goes across");
                }
            }
            return Optional.empty();
        }
        if (ohms.isPresent()) {
            return Optional.of(new Damping(winding.get(), ohms.getAsDouble(), highTension));
        }
        boolean known = q.isPresent() && kappa.isPresent() && picofarad.isPresent();
        if (!known || setup.generatorHz().isEmpty() || !(kappa.getAsDouble() > 1)) {
            section.problem(
                    "damp",
                    "'damp' needs 'damp-ohm', or 'q', 'coupling' (above 1 = over-coupled) and 'tank-pF' to"
                            + " work it out from");
            return Optional.empty();
        }
        double reactance = 1 / (2 * Math.PI * setup.generatorHz().getAsDouble() * picofarad.getAsDouble() * 1e-12);
        return Optional.of(Damping.suggested(winding.get(), q.getAsDouble(), kappa.getAsDouble(), reactance)
                .withHighTension(highTension));
    }
}
