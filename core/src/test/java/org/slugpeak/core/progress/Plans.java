package org.slugpeak.core.progress;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;

/** Small plans for tests. */
final class Plans {

    static final Setup IF_SETUP = setup(455e3);

    private Plans() {}

    static Setup setup(double generatorHz) {
        return new Setup(
                OptionalDouble.of(generatorHz),
                "none",
                "converter grid",
                "",
                OptionalDouble.empty(),
                "",
                "detector",
                Optional.of(new LevelRange(0.5, 1.5, "V")),
                HighTension.POSSIBLE);
    }

    static PlanStep step(String adjuster) {
        return new PlanStep(adjuster, Goal.PEAK, IF_SETUP, false, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    static PlanStep with(PlanStep step, Goal goal, Setup setup, boolean rock, Acceptance acceptance) {
        return new PlanStep(step.adjuster(), goal, setup, rock, step.damping(), acceptance, step.notes());
    }

    static Stage stage(String name, RepeatRule rule, PlanStep... steps) {
        return new Stage(name, List.of(steps), rule);
    }

    static Stage slugs(String... adjusters) {
        return new Stage("IF", Arrays.stream(adjusters).map(Plans::step).toList(), RepeatRule.USUAL);
    }

    static Plan plan(Stage... stages) {
        return new Plan(
                "Tarnfield 54A",
                Chassis.TRANSFORMER,
                List.of(),
                List.of(IntermediateFrequency.of(455e3)),
                List.of(),
                List.of(stages),
                List.of());
    }
}
