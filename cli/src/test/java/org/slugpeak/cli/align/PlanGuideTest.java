package org.slugpeak.cli.align;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.cli.run.QuietControl;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Response;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/** A guide in a session of its own: what the steps of a plan want is done, at its time. */
class PlanGuideTest {

    private static final long STEP_NANOS = 20_000_000L;
    private static final Band SHORT_WAVE =
            new Band("SW", 6e6, 18e6, Optional.of(OscillatorSide.ABOVE), TuningElement.CAPACITOR);

    private final List<SessionRecord> records = new ArrayList<>();
    private final QuietControl control = new QuietControl();
    private long tNanos;

    private static PlanStep step(String adjuster, MeterPoint point, boolean provesImage, Acceptance acceptance) {
        Particulars particulars = new Particulars(
                Optional.of(SHORT_WAVE),
                Optional.of(IntermediateFrequency.of(455e3)),
                false,
                Optional.of(point),
                Optional.empty());
        Setup setup = new Setup(
                OptionalDouble.of(16e6),
                "none",
                "aerial",
                "",
                OptionalDouble.empty(),
                "",
                "",
                Optional.empty(),
                HighTension.POSSIBLE,
                particulars);
        return new PlanStep(adjuster, Goal.ON_DIAL, setup, false, Optional.empty(), acceptance, provesImage, List.of());
    }

    @Test
    void whatIsToBeNotedStandsBehindTheNameOfThePlan() {
        new Running(once(step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM)));
        assertEquals(List.of(new Work.PlanBegun(0, "x"), new Said.Note(0, "serial=20417")), records.subList(0, 2));
    }

    @Test
    void aCounterIsHeldAgainstWhatTheStepWants() {
        Running running = new Running(once(step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM)));
        running.guide.counted(running.analysis, 1_412_000);
        double wantedHz = step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM)
                .setup()
                .generatorHz()
                .orElseThrow();
        assertEquals(new Said.Counted(0, 1_412_000, wantedHz, false), records.get(records.size() - 1));
    }

    private final class Running {

        private final PlanGuide guide;
        private final Analysis analysis;

        Running(Stage... stages) {
            Plan plan = new Plan(
                    "x",
                    Chassis.TRANSFORMER,
                    List.of(),
                    List.of(IntermediateFrequency.of(455e3)),
                    List.of(SHORT_WAVE),
                    List.of(stages),
                    List.of());
            guide = new PlanGuide(plan, List.of(), new AlignmentProgress(plan), setup -> {})
                    .noting(List.of("serial=20417"));
            analysis = new Analysis(PeakSettings.defaults(), record -> {
                guide.take(record);
                records.add(record);
            });
            guide.begin(analysis);
        }

        /** Reads for a while, then the user says: done. */
        void standThenNext(double seconds) {
            stand(seconds);
            guide.next(analysis);
            stand(0.1);
        }

        void stand(double seconds) {
            long end = tNanos + (long) (seconds * 1e9);
            for (; tNanos < end; tNanos += STEP_NANOS) {
                analysis.reading(Reading.of(tNanos, 1));
                guide.lead(analysis, control);
            }
        }
    }

    private static Stage once(PlanStep... steps) {
        return new Stage("SW", List.of(steps), new RepeatRule(0.2, 1));
    }

    private List<LevelCommand> commanded() {
        return records.stream()
                .filter(record -> record instanceof Said.Command)
                .map(record -> ((Said.Command) record).instruction())
                .filter(instruction -> instruction instanceof Instruction.Level)
                .map(instruction -> ((Instruction.Level) instruction).command())
                .toList();
    }

    private List<Adjuster.Action> actions(String adjuster) {
        return records.stream()
                .filter(record -> record instanceof Adjuster it && it.name().equals(adjuster))
                .map(record -> ((Adjuster) record).action())
                .toList();
    }

    @Test
    void eachStepSaysWhereTheMeterIsAndOnlyWhenItMoved() {
        Running session = new Running(once(
                step("C5", MeterPoint.DETECTOR, false, Acceptance.MAXIMUM),
                step("C6", MeterPoint.DETECTOR, false, Acceptance.MAXIMUM),
                step("L15", MeterPoint.VOICE_COIL, false, Acceptance.MAXIMUM)));
        for (int i = 0; i < 6; i++) {
            session.standThenNext(0.5);
        }
        assertEquals(
                List.of(LevelCommand.at(MeterPoint.DETECTOR), LevelCommand.at(MeterPoint.VOICE_COIL)), commanded());
        assertEquals(Optional.of(EndReason.Known.PLAN_THROUGH), control.reason());
    }

    @Test
    void theWindowIsThatOfThePlanWhereItSaysOneAndThatOfThePointElsewhere() {
        PlanStep detector = step("C5", MeterPoint.DETECTOR, false, Acceptance.MAXIMUM);
        StepWishes wishes = new StepWishes();
        Stage stage = once(detector);
        assertEquals(List.of(LevelCommand.at(MeterPoint.DETECTOR)), wishes.before(stage, detector));
        assertEquals(List.of(LevelCommand.below(3)), wishes.before(stage, withLevel(detector, 3, "V")));
        assertEquals(List.of(), wishes.before(stage, withLevel(detector, 3000, "mV")));
        assertEquals(List.of(LevelCommand.below(1.5)), wishes.before(stage, detector));
    }

    private static PlanStep withLevel(PlanStep step, double high, String unit) {
        Setup it = step.setup();
        Setup setup = new Setup(
                it.generatorHz(),
                it.modulation(),
                it.injection(),
                it.dummyAntenna(),
                it.dialHz(),
                it.dial(),
                it.meterPoint(),
                Optional.of(new LevelRange(0.1, high, unit)),
                it.highTension(),
                it.particulars());
        return new PlanStep(
                step.adjuster(), step.goal(), setup, false, Optional.empty(), step.acceptance(), false, List.of());
    }

    @Test
    void anAdjusterIsDoneOnlyWhenTheImageHasBeenLookedFor() {
        Running session = new Running(once(
                step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM),
                step("C6", MeterPoint.DETECTOR, false, Acceptance.MAXIMUM)));
        session.standThenNext(1);
        session.standThenNext(1);
        assertTrue(commanded().contains(LevelCommand.check(CheckKind.IMAGE)));
        session.stand(2);
        assertTrue(records.stream().anyMatch(record -> record instanceof Request.Asked));
        assertEquals(List.of(Adjuster.Action.BEGIN), actions("C5"));
        session.standThenNext(0.1);
        session.stand(2);
        session.standThenNext(0.1);
        assertEquals(List.of(Adjuster.Action.BEGIN, Adjuster.Action.DONE), actions("C5"));
        session.standThenNext(1);
        assertEquals(List.of(Adjuster.Action.BEGIN), actions("C6"));
    }

    @Test
    void aProofThatTheUserDropsHoldsNothingUp() {
        Running session = new Running(once(step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM)));
        session.standThenNext(1);
        session.standThenNext(1);
        session.guide.skip(session.analysis);
        session.stand(0.1);
        assertEquals(List.of(Adjuster.Action.BEGIN, Adjuster.Action.DONE), actions("C5"));
        assertEquals(Optional.of(EndReason.Known.PLAN_THROUGH), control.reason());
    }

    @Test
    void aSkippedAdjusterProvesNothing() {
        Running session = new Running(once(step("C5", MeterPoint.DETECTOR, true, Acceptance.MAXIMUM)));
        session.standThenNext(1);
        session.guide.skip(session.analysis);
        session.stand(0.1);
        assertEquals(List.of(Adjuster.Action.BEGIN, Adjuster.Action.SKIP), actions("C5"));
        assertFalse(commanded().contains(LevelCommand.check(CheckKind.IMAGE)));
    }

    @Test
    void skirtsAreComparedWhereTheStageSaysAndAsUsualInTheNext() {
        PlanStep step = step("T1", MeterPoint.DETECTOR, false, Acceptance.SKIRTS);
        Stage narrow = new Stage(
                "crystal",
                List.of(step),
                new RepeatRule(0.2, 1),
                new Response(OptionalDouble.of(500), OptionalDouble.empty()));
        Running session = new Running(narrow, once(step));
        session.standThenNext(1);
        session.standThenNext(1);
        session.stand(2);
        Request.Asked asked = (Request.Asked) records.stream()
                .filter(record -> record instanceof Request.Asked)
                .findFirst()
                .orElseThrow();
        assertEquals(500, asked.skirtHz());
        for (int i = 0; i < 20; i++) {
            session.standThenNext(1);
        }
        assertEquals(
                List.of(LevelCommand.skirtsAt(500), LevelCommand.skirtsAt(5e3)),
                commanded().stream()
                        .filter(each -> each.verb() == LevelCommand.Verb.SKIRTS_AT)
                        .toList());
        assertEquals(Optional.of(EndReason.Known.PLAN_THROUGH), control.reason());
    }
}
