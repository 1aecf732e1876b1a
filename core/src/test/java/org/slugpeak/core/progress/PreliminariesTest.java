package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;

class PreliminariesTest {

    private static final RepeatRule ONCE = new RepeatRule(0.2, 1);

    private static PlanStep at(String adjuster, String meterPoint, Optional<LevelRange> window, Goal goal) {
        Setup setup = new Setup(
                OptionalDouble.of(455e3),
                "none",
                "converter grid",
                "",
                OptionalDouble.empty(),
                "",
                meterPoint,
                window,
                HighTension.POSSIBLE);
        return Plans.with(Plans.step(adjuster), goal, setup, false, Acceptance.MAXIMUM);
    }

    private static Optional<LevelRange> volts(double low, double high) {
        return Optional.of(new LevelRange(low, high, "V"));
    }

    @Nested
    class Rest {

        private Session session(PlanStep... steps) {
            AlignmentProgress progress = new AlignmentProgress(Plans.plan(Plans.stage("IF", ONCE, steps)));
            progress.withRest();
            return new Session(progress).stand(1, 2);
        }

        @Test
        void isTakenAnewWhereTheMeterGoesToAnotherPoint() {
            Session session = session(
                    at("T2", "detector", volts(0.5, 1.5), Goal.PEAK),
                    at("T1", "detector", volts(0.5, 1.5), Goal.PEAK),
                    at("L1", "AVC line", volts(0.5, 3), Goal.PEAK));
            Instruction rest = Session.check(CheckKind.REST);
            assertEquals(List.of(rest), session.orders());
            session.checkOver().stand(1, 2).peak(2).stand(1, 2);
            assertEquals(List.of("T2", "T1"), session.begun());
            session.peak(2).stand(0.3, 5);
            assertEquals(List.of(rest, rest), session.orders());
            session.checkOver().stand(0.3, 2);
            assertEquals(List.of("T2", "T1", "L1"), session.begun());
        }

        @Test
        void waitsForTheNextAdjusterAsTheHalvingDoesWhereNothingIsHeardOfTheGenerator() {
            AlignmentProgress progress =
                    new AlignmentProgress(Plans.plan(Plans.stage("MW", ONCE, Plans.step("C1"), Plans.step("C2"))));
            progress.withRest();
            progress.withHalvings();
            Session session = new Session(progress).stand(1, 2);
            Instruction rest = Session.check(CheckKind.REST);
            assertEquals(List.of(rest), session.orders());
            session.checkDropped();
            assertEquals(List.of("C1"), session.begun());
            session.peak(30).stand(1, 2);
            assertEquals(List.of(rest, rest), session.orders());
            session.checkOver().stand(1, 2);
            assertEquals(List.of(rest, rest, Session.check(CheckKind.LEVEL)), session.orders());
        }

        @Test
        void isNotAskedForAtAZeroWhichHasNoDecibels() {
            Session session = session(at("T4", "audio point", Optional.empty(), Goal.ZERO));
            assertEquals(List.of(), session.orders());
            assertEquals(List.of("T4"), session.begun());
        }
    }

    @Nested
    class Halving {

        private static final Instruction HALVE = Session.check(CheckKind.LEVEL);

        private Session session(double reading) {
            AlignmentProgress progress = new AlignmentProgress(Plans.plan(
                    Plans.stage("IF", ONCE, Plans.step("T2"), Plans.step("T1")),
                    Plans.stage("MW", ONCE, Plans.step("C2"))));
            progress.withHalvings();
            return new Session(progress).stand(reading, 2);
        }

        @Test
        void isTheFirstThingInEachStage() {
            Session session = session(1);
            assertEquals(List.of(HALVE), session.orders());
            session.checkOver().stand(1, 2).peak(1).stand(1, 2).peak(1).stand(0.7, 4);
            assertEquals(List.of("T2", "T1"), session.begun());
            assertEquals(List.of(HALVE, HALVE), session.orders());
        }

        @Test
        void waitsForASignalThatIsLargeEnough() {
            Session session = session(0.3);
            assertEquals(List.of("T2"), session.begun());
            session.stand(1, 1).peak(10).stand(1, 2);
            assertEquals(List.of(HALVE), session.orders());
        }

        @Test
        void whatDoesNotFollowIsTriedOnceMoreWithTheLowerSignalAndThenWithGainControlClamped() {
            Session session = session(1).flattened();
            assertEquals(List.of(HALVE, HALVE), session.orders());
            assertEquals(List.of(), session.guards());
            session.flattened();
            assertEquals(
                    List.of(Guard.ClampGainControl.class),
                    session.guards().stream().map(Object::getClass).toList());
            session.key(session.progress::next);
            assertEquals(List.of(HALVE, HALVE, HALVE), session.orders());
            assertEquals(List.of(), session.begun());
            assertEquals(List.of("T2"), session.checkOver().stand(1, 2).begun());
        }

        @Test
        void aLowerSignalThatIsFollowedIsWorkedWith() {
            assertEquals(
                    List.of("T2"),
                    session(1).flattened().checkOver().stand(1, 2).begun());
        }

        @Test
        void aClampThatHelpsNothingDoesNotHoldTheWorkUp() {
            Session session = session(1).flattened().flattened().key(() -> {});
            session.key(session.progress::next).flattened().stand(1, 2);
            assertEquals(List.of("T2"), session.begun());
        }

        @Test
        void aLineThatTheUserWillNotHoldIsLeftAsItIs() {
            Session session = session(1).flattened().flattened();
            session.key(session.progress::skip);
            assertEquals(List.of(HALVE, HALVE), session.orders());
            assertEquals(List.of("T2"), session.begun());
        }

        @Test
        void theSetMayBeOffForLongWhileTheLineIsClipped() {
            Session session = session(1).flattened().flattened();
            session.stand(0.001, 30);
            assertEquals(List.of(HALVE, HALVE), session.orders(), "off, and nobody is to hurry");
            session.stand(1, 3);
            assertEquals(List.of(HALVE, HALVE, HALVE), session.orders());
        }

        @Test
        void isLeftOutByAKey() {
            Session session = session(1);
            session.key(session.progress::skip);
            assertEquals(List.of(HALVE, new Instruction.Level(LevelCommand.cancel())), session.orders());
            assertEquals(List.of("T2"), session.begun());
        }

        @Test
        void whatALimiterHoldsIsHalvedUntilItFollowsAndNoClampIsAskedFor() {
            Session session = session(1).limited().limited().limited();
            assertEquals(List.of(HALVE, HALVE, HALVE, HALVE), session.orders());
            assertEquals(List.of(), session.said(Guard.ClampGainControl.class));
            assertEquals(List.of("T2"), session.checkOver().stand(0.2, 2).begun());
        }

        @Test
        void aLimiterThatNothingHelpsAgainstDoesNotHoldTheWorkUpForEver() {
            Session session = session(1);
            for (int i = 0; i < 9; i++) {
                session.limited();
            }
            assertEquals(1, session.stand(1, 2).begun().size());
        }
    }

    @Nested
    class Law {

        private static final Instruction LAW = Session.check(CheckKind.DETECTOR_LAW);

        private Session session(PlanStep... steps) {
            AlignmentProgress progress = new AlignmentProgress(Plans.plan(Plans.stage("IF", ONCE, steps)));
            progress.withLaw();
            return new Session(progress);
        }

        @Test
        void isMeasuredOnceAtAMeterPointAndFromTheUpperEndOfItsWindow() {
            Session session = session(
                    at("T2", "detector", volts(0.5, 1.5), Goal.PEAK), at("T1", "detector", volts(0.5, 1.5), Goal.PEAK));
            session.stand(0.6, 2);
            Request.CutGenerator up = session.said(Request.CutGenerator.class).get(0);
            assertEquals(1.2, up.toReading(), 1e-9);
            assertEquals(Math.pow(2, 1 / 1.5), up.factor(), 1e-9);
            assertEquals(List.of(), session.orders());
            session.stand(1.1, 3);
            assertEquals(List.of(LAW), session.orders());
            session.checkOver().stand(1, 2).peak(2).stand(1, 2);
            assertEquals(List.of(LAW), session.orders());
            assertEquals(List.of("T2", "T1"), session.begun());
        }

        @Test
        void isMeasuredAtOnceWhereTheReadingStandsHighOrNobodyKnowsHowHighItMayBe() {
            assertEquals(
                    List.of(LAW),
                    session(at("T2", "detector", volts(0.5, 1.5), Goal.PEAK))
                            .stand(1.3, 2)
                            .orders());
            assertEquals(
                    List.of(LAW),
                    session(at("T2", "detector", Optional.empty(), Goal.PEAK))
                            .stand(1e-3, 2)
                            .orders());
        }

        @Test
        void isNotMeasuredWhereSoLittleIsReadThatTheStepsWouldEndInTheNoiseNorAtAZero() {
            Session weak =
                    session(at("T2", "detector", volts(0.5, 1.5), Goal.PEAK)).stand(0.1, 2);
            assertEquals(List.of(), weak.orders());
            assertEquals(List.of("T2"), weak.begun());
            assertEquals(
                    List.of(),
                    session(at("T4", "audio point", Optional.empty(), Goal.ZERO))
                            .stand(1, 2)
                            .orders());
        }

        @Test
        void whoSkipsItOrSaysThatItIsHighEnoughGoesOn() {
            Session session =
                    session(at("T2", "detector", volts(0.5, 1.5), Goal.PEAK)).stand(0.6, 2);
            session.progress.next();
            assertEquals(List.of(LAW), session.stand(0.6, 0.1).orders());
            Session skipped =
                    session(at("T2", "detector", volts(0.5, 1.5), Goal.PEAK)).stand(0.6, 2);
            skipped.progress.skip();
            assertEquals(List.of("T2"), skipped.stand(0.6, 0.1).begun());
            assertEquals(List.of(), skipped.orders());
        }
    }
}
