package org.slugpeak.core.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.word.Refused;

class PlannedSetTest {

    private static PlanStep step(String adjuster, Goal goal, OptionalDouble hz, String modulation, String meter) {
        Setup setup = new Setup(
                hz,
                modulation,
                "converter grid",
                "",
                OptionalDouble.empty(),
                "",
                meter,
                Optional.empty(),
                new HighTension(false, false));
        return new PlanStep(adjuster, goal, setup, false, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    private static PlanStep step(String adjuster, Goal goal, double hz) {
        return step(adjuster, goal, OptionalDouble.of(hz), "none", "detector");
    }

    private static Plan plan(PlanStep... steps) {
        return new Plan(
                "A set",
                Chassis.TRANSFORMER,
                List.of(),
                List.of(IntermediateFrequency.of(455e3)),
                List.of(),
                List.of(new Stage("Stage", List.of(steps), RepeatRule.USUAL)),
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "PEAK, 455e3, IF_WINDING",
        "PEAK, 465e3, IF_WINDING",
        "DIP, 455e3, TRAP",
        "ZERO, 455e3, DISCRIMINATOR",
        "ON_DIAL, 600e3, OSCILLATOR",
        "PEAK, 1400e3, SIGNAL"
    })
    void aStepTellsWhichCircuitItsAdjusterIsIn(Goal goal, double hz, Role role) throws Refused {
        assertEquals(
                role,
                PlannedSet.of(plan(step("X", goal, hz)), 1).scenes().get(0).role());
    }

    @ParameterizedTest
    @CsvSource({
        "limiter grid, LIMITER_GRID",
        "'ratio detector electrolytic C62, DC', RATIO_DETECTOR",
        "'AVC line, DC', AVC",
        "'voice coil, 3.2 ohm', VOICE_COIL",
        "'detector load, DC', DETECTOR"
    })
    void theWordsOfAPlanTellWhereTheMeterStands(String words, MeterPoint point) throws Refused {
        PlanStep step = step("T1 top", Goal.PEAK, OptionalDouble.of(455e3), "400 Hz, 30 %", words);
        assertEquals(point, PlannedSet.of(plan(step), 1).scenes().get(0).point());
    }

    private static void assertRefused(String why, PlanStep... steps) {
        String reason =
                assertThrows(Refused.class, () -> PlannedSet.of(plan(steps), 1)).reason();
        assertTrue(reason.startsWith("step 'X' of stage 'Stage' ") && reason.contains(why), reason);
    }

    @Test
    void whatCannotBePlayedIsRefusedByTheNameOfItsStep() {
        assertRefused("neither", step("X", Goal.PEAK, OptionalDouble.empty(), "none", "detector"));
        assertRefused("not modulated", step("X", Goal.PEAK, OptionalDouble.of(455e3), "none", "voice coil"));
        assertRefused("seeks a zero away", step("X", Goal.ZERO, 1000e3));
        assertRefused("crystal", step("X", Goal.CRYSTAL, 455e3));
        assertRefused("another circuit", step("X", Goal.PEAK, 455e3), step("X", Goal.ON_DIAL, 600e3));
    }

    @Test
    void everyAdjusterIsOutAtFirstAndTheSameSeedPutsItOutAlike() throws Refused {
        Plan plan = plan(step("T1 top", Goal.PEAK, 455e3), step("T1 bottom", Goal.PEAK, 455e3));
        PlannedSet set = PlannedSet.of(plan, 5);
        for (PlannedScene scene : set.scenes()) {
            Knob knob = set.knob(scene.step().adjuster()).orElseThrow();
            assertTrue(set.truth().missingDb(scene) > 0.01, scene.name());
            assertEquals(
                    knob.turns(),
                    PlannedSet.of(plan, 5).knob(knob.name()).orElseThrow().turns());
        }
    }

    @Test
    void nothingIsMissingInTune() throws Refused {
        PlannedSet set = PlannedSet.of(plan(step("T1 top", Goal.PEAK, 455e3), step("T1 bottom", Goal.PEAK, 455e3)), 5);
        set.knobs().values().forEach(knob -> knob.turnTo(0));
        assertEquals(0, set.truth().missingDb(set.scenes().get(0)), 0.01);
    }
}
