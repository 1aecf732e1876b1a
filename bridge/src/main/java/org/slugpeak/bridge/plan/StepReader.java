package org.slugpeak.bridge.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;

/** Makes steps of a stage: what a step does not say is what its stage says. One thread at a time. */
final class StepReader {

    /** A step, and where it stands in the file. */
    private record Written(PlanStep step, Section where) {}

    private final SetupReader setups;
    private final List<Written> all = new ArrayList<>();

    StepReader(SetupReader setups) {
        this.setups = setups;
    }

    List<PlanStep> steps(Section stage) {
        PlanStep common = step("", stage, Optional.empty());
        List<String> listed = stage.texts("adjust", List.of());
        List<PlanStep> steps = new ArrayList<>();
        if (!listed.isEmpty()) {
            written(common, stage);
            listed.forEach(adjuster -> steps.add(common.withAdjuster(adjuster)));
        }
        for (Section each : stage.tables("step")) {
            try (each) {
                PlanStep step = step(each.requiredText("adjust"), each, Optional.of(common));
                written(step, each);
                steps.add(step);
            }
        }
        if (steps.isEmpty()) {
            stage.problem("adjust", "a stage needs adjusters: adjust = [\"T2 top\", \"T2 bottom\"], or [[stage.step]]");
        }
        return steps;
    }

    private void written(PlanStep step, Section where) {
        StepRules.check(step, where);
        all.add(new Written(step, where));
    }

    /** Where only some steps name their point, nobody knows when the window and the rest of another one end. */
    void refusePointsOfSomeSteps() {
        boolean some = all.stream().anyMatch(each -> hasPoint(each.step()));
        all.stream()
                .filter(each -> some && !hasPoint(each.step()))
                .forEach(each -> each.where()
                        .problem(
                                "meter",
                                "'meter-point' is said of other steps, so it must be said here too: "
                                        + String.join(
                                                ", ",
                                                Words.POINTS.keySet().stream()
                                                        .sorted()
                                                        .toList())));
    }

    private static boolean hasPoint(PlanStep step) {
        return step.setup().particulars().point().isPresent();
    }

    private PlanStep step(String adjuster, Section section, Optional<PlanStep> common) {
        Setup setup = setups.setup(section, common.map(PlanStep::setup));
        List<String> notes = section.texts("notes", common.map(PlanStep::notes).orElse(List.of()));
        Acceptance acceptance = section.choice(
                "accept", Words.ACCEPTANCES, common.map(PlanStep::acceptance).orElse(Acceptance.MAXIMUM));
        Optional<Damping> damping = DampingReader.damping(section, setup).or(() -> common.flatMap(PlanStep::damping));
        refuseMisleadingMaximum(section, acceptance, damping);
        return new PlanStep(
                adjuster,
                section.choice("seek", Words.GOALS, common.map(PlanStep::goal).orElse(Goal.PEAK)),
                setup,
                section.flag("rock", common.map(PlanStep::rock).orElse(false)),
                damping,
                acceptance,
                section.flag("prove-image", common.map(PlanStep::provesImage).orElse(false)),
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
}
