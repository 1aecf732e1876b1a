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
        "PEAK, 1400e3, SIGNAL",
        "CRYSTAL, 455e3, CRYSTAL",
        "ZERO_BEAT, 455e3, BEAT_OSCILLATOR"
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
        assertRefused("seeks 'crystal' away", step("X", Goal.CRYSTAL, 1000e3));
        assertRefused("seeks 'zero-beat' away", step("X", Goal.ZERO_BEAT, 1000e3));
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

    private static Plan doubleSuperhet(PlanStep... steps) {
        Plan plan = plan(steps);
        return new Plan(
                plan.name(),
                plan.chassis(),
                plan.valves(),
                List.of(IntermediateFrequency.of(1600e3), IntermediateFrequency.of(455e3)),
                plan.bands(),
                plan.stages(),
                plan.notes());
    }

    @Test
    void theCrystalLiesBesideItsMarkingAndTheGeneratorStaysWhereItWasFound() throws Refused {
        PlannedSet set = PlannedSet.of(
                plan(step("generator", Goal.CRYSTAL, 455e3), step("L11 crystal load", Goal.PEAK, 455e3)), 5);
        assertEquals(Role.CRYSTAL_LOAD, set.scenes().get(1).role());
        set.knobs().values().forEach(knob -> knob.turnTo(0));
        set.step(0);
        assertEquals(455350, set.generator().frequencyHz(), 1e-6);
        assertEquals(0, set.truth().missingDb(set.scenes().get(0)), 1e-3);
    }

    @Test
    void aSecondOscillatorThatIsOffTakesTheSignalOutOfTheSecondIf() throws Refused {
        PlannedSet set = PlannedSet.of(
                doubleSuperhet(step("second oscillator", Goal.PEAK, 1600e3), step("T1 top", Goal.PEAK, 455e3)), 5);
        assertEquals(Role.SECOND_OSCILLATOR, set.scenes().get(0).role());
        set.knobs().values().forEach(knob -> knob.turnTo(0));
        assertEquals(0, set.truth().missingDb(set.scenes().get(0)), 1e-3);
        set.knob("second oscillator").orElseThrow().turnTo(0.4);
        assertTrue(set.truth().missingDb(set.scenes().get(0)) > 3);
    }

    @Test
    void aBeatNoteFallsToNothingWhereTheOscillatorMeetsTheCarrier() throws Refused {
        PlannedSet set = PlannedSet.of(plan(step("BFO", Goal.ZERO_BEAT, 455e3)), 5);
        Knob pitch = set.knob("BFO").orElseThrow();
        set.setLevel(2);
        pitch.turnTo(0.4);
        double beatHz = set.truth().beatHz(set.scenes().get(0));
        set.step(0);
        double heard = set.voiceCoilVolts();
        assertTrue(beatHz > 800 && beatHz < 1000, "beat " + beatHz);
        assertTrue(heard > 1.1 && heard < 1.5, "heard " + heard);
        pitch.turnTo(0);
        set.step(10_000_000);
        double left = set.voiceCoilVolts();
        assertTrue(left < 0.2 * heard, "left " + left);
        assertTrue(left > 0.05, "the noise of the carrier stays, " + left);
    }

    /** rehearsal/README.md R6: at 15 MHz an aerial trimmer pulls the oscillator by kilohertz, at 1.4 MHz by nothing that counts. */
    @ParameterizedTest
    @CsvSource({"15e6, 3e3, 3e4", "1.4e6, 0, 200"})
    void theAerialTrimmerPullsTheOscillatorWhereTheIfIsSmallBesideTheSignal(double hz, double least, double most)
            throws Refused {
        PlannedSet set = PlannedSet.of(
                plan(step("oscillator slug", Goal.ON_DIAL, hz), step("aerial trimmer", Goal.PEAK, hz)), 5);
        PlannedScene oscillator = set.scenes().get(0);
        set.knobs().values().forEach(knob -> knob.turnTo(0));
        double before = set.truth().dialOff(oscillator);
        set.knob("aerial trimmer").orElseThrow().turnTo(2 / 9.0);
        double pulledHz = Math.abs(set.truth().dialOff(oscillator) - before) * hz;
        assertTrue(pulledHz >= least && pulledHz <= most, "pulled " + pulledHz);
    }
}
