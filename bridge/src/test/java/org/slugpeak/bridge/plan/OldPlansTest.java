package org.slugpeak.bridge.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;

/** Plans as they were written before bands, several frequencies and meter points had names: what they say is read as it was. */
class OldPlansTest {

    private static final HighTension NONE = new HighTension(false, false);

    private static Plan read(String name) throws IOException, BadConfiguration {
        try (var in = OldPlansTest.class.getResourceAsStream(name + "-1.toml")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new PlanReader(name, OptionalDouble.empty()).read(text);
        }
    }

    /** Of a set with one intermediate frequency there is no doubt which one a step is about; nothing else is made up. */
    private static Setup setup(double generatorHz, String inject, String dummy, OptionalDouble dialHz, String dial) {
        return new Setup(
                OptionalDouble.of(generatorHz),
                "none",
                inject,
                dummy,
                dialHz,
                dial,
                "detector load, DC",
                Optional.of(new LevelRange(0.5, 1.5, "V")),
                NONE,
                new Particulars(
                        Optional.empty(),
                        Optional.of(IntermediateFrequency.of(455e3)),
                        false,
                        Optional.empty(),
                        Optional.empty()));
    }

    private static PlanStep step(String adjuster, Goal goal, Setup setup, boolean rock) {
        return new PlanStep(adjuster, goal, setup, rock, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    @Test
    void theTableSetIsTheOneItWas() throws Exception {
        Plan plan = read("tarnfield-54a");
        assertEquals(List.of(455e3), plan.intermediatesHz());
        assertEquals(List.of(new Band("MW", 530e3, 1620e3), new Band("SW", 5.8e6, 18.2e6)), plan.bands());
        Setup grid = setup(455e3, "converter grid through 0.05 uF", "", OptionalDouble.empty(), "1620, quiet");
        assertEquals(
                new Stage(
                        "AM IF",
                        List.of(
                                step("T2 top", Goal.PEAK, grid, false),
                                step("T2 bottom", Goal.PEAK, grid, false),
                                step("T1 top", Goal.PEAK, grid, false),
                                step("T1 bottom", Goal.PEAK, grid, false)),
                        RepeatRule.USUAL),
                plan.stages().get(0));
        assertEquals(
                new Stage(
                        "MW oscillator",
                        List.of(
                                step("C2 oscillator trimmer", Goal.ON_DIAL, aerial(1400e3), false),
                                step("C3 padder", Goal.ON_DIAL, aerial(600e3), true)),
                        RepeatRule.USUAL),
                plan.stages().get(2));
    }

    private static Setup aerial(double hz) {
        return setup(hz, "antenna", "200 pF", OptionalDouble.of(hz), "");
    }

    @Test
    void ofTwoIntermediateFrequenciesWithoutNamesNoneIsTakenForAStep() throws Exception {
        Plan plan = read("quillmere-fm-8");
        assertEquals(List.of(10.7e6, 460e3), plan.intermediatesHz());
        for (Stage stage : plan.stages()) {
            stage.steps()
                    .forEach(step -> assertEquals(Particulars.NONE, step.setup().particulars(), step.adjuster()));
        }
    }
}
