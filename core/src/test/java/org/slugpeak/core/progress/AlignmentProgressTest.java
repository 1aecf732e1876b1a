package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

class AlignmentProgressTest {

    private static Session started(Plan plan) {
        return new Session(plan).stand(1, 2);
    }

    private static List<Preparation> prepared(Session session) {
        return session.said(Request.SetUp.class).stream()
                .map(Request.SetUp::what)
                .toList();
    }

    private static Instruction check(CheckKind kind) {
        return new Instruction.Level(LevelCommand.check(kind));
    }

    /** Common practice: from the detector back, repeated until a whole round changes less than 0.2 dB. */
    @Nested
    class Rounds {

        @Test
        void goOnUntilAWholeRoundGainsLessThanTwoTenths() {
            Session session = started(Plans.plan(Plans.slugs("T2 top", "T2 bottom")));
            session.peak(8).stand(1, 2).peak(1).stand(1, 2);
            session.peak(0.15).stand(1, 2).peak(0.1).stand(1, 2);
            assertFalse(session.isFinished(), "0.25 dB in the second round");
            session.peak(0.05).stand(1, 2).peak(0.02).stand(1, 2);
            assertTrue(session.isFinished());
            assertEquals(List.of("T2 top", "T2 bottom", "T2 top", "T2 bottom", "T2 top", "T2 bottom"), session.begun());
            List<Work.RoundEnded> rounds = session.said(Work.RoundEnded.class);
            assertEquals(
                    List.of(RoundVerdict.AGAIN, RoundVerdict.AGAIN, RoundVerdict.CONVERGED),
                    rounds.stream().map(Work.RoundEnded::verdict).toList());
            assertEquals(
                    List.of(1, 2, 3),
                    rounds.stream().map(Work.RoundEnded::round).toList());
            assertEquals("IF", rounds.get(0).stage());
            assertEquals(9, rounds.get(0).gainDb(), 1e-9);
            assertEquals(0.25, rounds.get(1).gainDb(), 1e-9);
            assertEquals(0.07, rounds.get(2).gainDb(), 1e-9);
        }

        @Test
        void countALossAsMuchAsAGain() {
            Session session = started(Plans.plan(Plans.slugs("T2 top", "T2 bottom")));
            session.peak(8).stand(1, 2).peak(1).stand(1, 2);
            session.peak(0.12).stand(1, 2).peak(-0.11).stand(1, 2);
            assertFalse(session.isFinished(), "the one was left worse than it had been");
            session.peak(0.11).stand(1, 2).peak(0.02).stand(1, 2);
            assertTrue(session.isFinished());
        }

        @Test
        void endWithAWarningWhereTheyNeverStopGaining() {
            Stage stage = Plans.stage("IF", new RepeatRule(0.2, 2), Plans.step("T1"));
            Session session =
                    started(Plans.plan(stage)).peak(3).stand(1, 2).peak(2).stand(1, 2);
            assertTrue(session.isFinished());
            assertEquals(RoundVerdict.STILL_GAINING, verdict(session, 1));
        }

        @Test
        void thatCreepAreATellTaleOfAnOverCoupledTransformer() {
            Session session = started(Plans.plan(Plans.slugs("T1 top", "T1 bottom")));
            for (double gain : new double[] {4, 1, 0.5, 0.5, 0.45, 0.45}) {
                session.peak(gain).stand(1, 2);
            }
            assertEquals(RoundVerdict.AGAIN, verdict(session, 1));
            assertEquals(RoundVerdict.CREEPING, verdict(session, 2));
        }

        private RoundVerdict verdict(Session session, int round) {
            return session.said(Work.RoundEnded.class).get(round).verdict();
        }

        @Test
        void onceIsOnce() {
            Stage trap = Plans.stage("trap", new RepeatRule(0.2, 1), Plans.step("L9"));
            assertTrue(started(Plans.plan(trap)).peak(14).isFinished());
        }

        @Test
        void ofADipCountLessAsMore() {
            PlanStep trap = Plans.with(Plans.step("L9"), Goal.DIP, Plans.IF_SETUP, false, Acceptance.MAXIMUM);
            Session session = started(Plans.plan(Plans.stage("trap", RepeatRule.USUAL, trap)));
            session.peak(-14).stand(1, 2);
            assertFalse(session.isFinished(), "14 dB less is much gained");
            session.peak(-0.1);
            assertTrue(session.isFinished());
        }
    }

    @Nested
    class Settling {

        @Test
        void waitsUntilTheReadingStands() {
            Session session = new Session(Plans.plan(Plans.slugs("T1")));
            for (int i = 0; i < 60; i++) {
                session.read(1 + i * 0.05);
            }
            assertTrue(session.begun().isEmpty());
            assertEquals(List.of("T1"), session.stand(4, 2).begun());
        }

        @Test
        void saysHowGeneratorDialAndMeterStand() {
            Preparation first =
                    new Preparation(Optional.of(Plans.IF_SETUP), true, false, Optional.empty(), Optional.empty());
            assertEquals(List.of(first), prepared(started(Plans.plan(Plans.slugs("T1")))));
        }

        @Test
        void afterAChangeOfTheGeneratorTheReadingMustShowIt() {
            PlanStep high = Plans.with(Plans.step("C2"), Goal.ON_DIAL, Plans.setup(1400e3), false, Acceptance.MAXIMUM);
            Session session = started(Plans.plan(
                    Plans.stage("IF", new RepeatRule(0.2, 1), Plans.step("T1")),
                    Plans.stage("MW", new RepeatRule(0.2, 1), high)));
            session.peak(3).stand(1, 5);
            assertEquals(List.of("T1"), session.begun(), "nothing shows that the generator was set");
            session.stand(0.4, 2);
            assertEquals(List.of("T1", "C2"), session.begun());
        }

        @Test
        void aKeySaysThatItIsDoneWhereNothingShows() {
            Session session = new Session(Plans.plan(Plans.slugs("T1")));
            session.read(1);
            session.key(session.progress::next);
            assertEquals(List.of("T1"), session.begun());
        }
    }

    /** A pair that is not over-coupled has nothing left to gain after a round; the bound is derived in CouplingWatch. */
    @Nested
    class OverCoupling {

        private Session rounds(Plan plan, double... gains) {
            Session session = started(plan);
            for (double gain : gains) {
                session.peak(gain).stand(1, 2);
            }
            return session;
        }

        @Test
        void isSuspectedOnceWhereALaterRoundGainsDecibels() {
            Session session = rounds(Plans.plan(Plans.slugs("T1 top", "T1 bottom")), 5, 3, 2.4, 0.1, 2.5, 0.1);
            assertEquals(1, session.guards().size());
            Guard.LateGain said = session.said(Guard.LateGain.class).get(0);
            assertEquals("T1 top", said.adjuster());
            assertEquals(2.4, said.gainDb());
            assertEquals(2, said.round());
        }

        @Test
        void isNotSuspectedWhereLaterRoundsGainWhatAHandLeaves() {
            Session session = rounds(Plans.plan(Plans.slugs("T1 top", "T1 bottom")), 5, 3, 0.45, 0.4, 0.3, 0.1, 0, 0);
            assertTrue(session.guards().isEmpty());
        }

        @Test
        void isNotSuspectedWhereAdjustersOfDifferentFrequenciesWorkUponEachOther() {
            PlanStep low = Plans.with(Plans.step("C3"), Goal.PEAK, Plans.setup(600e3), false, Acceptance.MAXIMUM);
            Stage stage = Plans.stage("MW", RepeatRule.USUAL, Plans.step("C1"), low);
            Session session = started(Plans.plan(stage));
            for (double gain : new double[] {5, 3, 2.4, 0.8, 1.5, 0.7}) {
                session.peak(gain).stand(1, 2).stand(3, 2).stand(1, 2);
            }
            assertTrue(session.guards().isEmpty());
        }
    }

    /** Nobody must wait for a word that cannot come. */
    @Nested
    class Stuck {

        private final Session session = started(Plans.plan(Plans.slugs("T1 top")));

        @Test
        void shortOfTheBestSaysWhatIsMissing() {
            session.best(1.05).returned().stand(1, 5);
            assertTrue(session.guards().isEmpty(), "it may still be held");
            session.stand(1, 2);
            assertEquals(1, session.guards().size());
            double missingDb = session.said(Guard.StillShort.class).get(0).missingDb();
            assertEquals(20 * Math.log10(1.05), missingDb, 1e-9);
        }

        @Test
        void belowABestThatIsOutOfReachIsBegunAgain() {
            session.best(1.05).passed().stand(1, 21);
            assertEquals(List.of("T1 top", "T1 top"), session.begun());
            assertTrue(session.guards().get(1) instanceof Guard.BegunAgain);
            session.best(1).stand(1, 60);
            assertEquals(2, session.begun().size(), "without a new word to turn back nobody waits for anything");
        }

        @Test
        void meansAnotherRoundSinceNobodyKnowsWhatWasGained() {
            session.best(1.05).passed().stand(1, 21).best(1);
            session.peak(0.1).stand(1, 2);
            assertFalse(session.isFinished());
            session.peak(0.1).stand(1, 2);
            assertTrue(session.isFinished());
        }

        @Test
        void isNobodyWhoTurnsSlowly() {
            session.best(2).passed();
            for (int i = 0; i < 40 * Session.READINGS_PER_SECOND; i++) {
                session.read(Math.pow(10, i * 0.1 / 20 / Session.READINGS_PER_SECOND));
            }
            assertEquals(List.of("T1 top"), session.begun());
            assertTrue(session.guards().isEmpty());
        }

        @Test
        void isNotSaidWhereNothingWasFoundYet() {
            session.stand(1, 60);
            assertEquals(List.of("T1 top"), session.begun());
            assertTrue(session.guards().isEmpty());
        }
    }

    @Nested
    class HandsOff {

        @Test
        void changeIsReportedWithItsSign() {
            Session session = started(Plans.plan(Plans.slugs("T1")));
            session.held().stand(0.95, 3);
            double changeDb = session.said(Work.HandEffect.class).get(0).changeDb();
            assertEquals(20 * Math.log10(0.95), changeDb, 0.01);
        }

        @Test
        void smallChangeIsNot() {
            Session session = started(Plans.plan(Plans.slugs("T1")));
            session.held().stand(0.99, 3);
            assertTrue(session.said(Work.HandEffect.class).isEmpty());
        }
    }

    @Nested
    class Guards {

        @Test
        void twoMaximaAskWhichOne() {
            Session session = started(Plans.plan(Plans.slugs("T1", "T2")));
            session.twoPeaks().held().stand(1, 5);
            assertEquals(2, session.guards().size());
            assertEquals(List.of("T1"), session.begun(), "not yet chosen");
            session.stand(1, 10);
            assertEquals(List.of("T1", "T2"), session.begun(), "staying chooses it");
        }

        @Test
        void turningOnIsNotChoosing() {
            Session session = started(Plans.plan(Plans.slugs("T1", "T2")));
            session.twoPeaks().held().stand(1, 5).stand(0.5, 5).stand(0.9, 8);
            assertEquals(List.of("T1"), session.begun());
            session.held().key(session.progress::next).stand(1, 3);
            assertEquals(List.of("T1", "T2"), session.begun());
        }

        @Test
        void endOfTravelIsTold() {
            Session session = started(Plans.plan(Plans.slugs("T1")));
            session.noPeak(NoPeakReason.END_OF_TRAVEL);
            assertTrue(session.guards().get(0) instanceof Guard.EndOfTravel);
        }

        @Test
        void skirtsAreComparedWhereThePlanWantsIt() {
            PlanStep wide = Plans.with(Plans.step("T1"), Goal.PEAK, Plans.IF_SETUP, false, Acceptance.SKIRTS);
            Session session = started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), wide)));
            session.peak(2);
            assertEquals(List.of(check(CheckKind.SKIRTS)), session.orders());
            assertFalse(session.isFinished());
            assertTrue(session.checkOver().isFinished());
        }

        @Test
        void aKeySaysThatTheMoveOfACheckIsMadeAndAnotherDropsIt() {
            PlanStep wide = Plans.with(Plans.step("T1"), Goal.PEAK, Plans.IF_SETUP, false, Acceptance.SKIRTS);
            Session session = started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), wide)));
            session.peak(2).key(session.progress::next);
            assertFalse(session.isFinished());
            session.key(session.progress::skip);
            assertEquals(
                    List.of(
                            check(CheckKind.SKIRTS),
                            new Instruction.Level(LevelCommand.done()),
                            new Instruction.Level(LevelCommand.cancel())),
                    session.orders());
            assertTrue(session.isFinished());
        }

        @Test
        void theRestingReadingComesBeforeEverything() {
            AlignmentProgress progress = new AlignmentProgress(Plans.plan(Plans.slugs("T2 top")));
            progress.restFirst();
            Session session = new Session(progress).stand(1, 20);
            assertEquals(List.of(check(CheckKind.REST)), session.orders());
            assertEquals(List.of(), session.begun());
            session.checkOver().stand(1, 3);
            assertEquals(List.of("T2 top"), session.begun());
        }
    }

    /** Common practice, no source: IF primaries stand at high tension, so nothing is clipped to a set that is on. */
    @Nested
    class HandsInTheSet {

        private PlanStep damped(String adjuster, Acceptance acceptance, Damping damping) {
            return new PlanStep(
                    adjuster, Goal.PEAK, Plans.IF_SETUP, false, Optional.of(damping), acceptance, List.of());
        }

        private final PlanStep top = damped("T1 top", Acceptance.SKIRTS, new Damping("T1 bottom", 22e3));
        private final PlanStep bottom = damped("T1 bottom", Acceptance.SKIRTS, new Damping("T1 top", 22e3, false));

        @Test
        void dampingGoesOnAndOverAndOffWithTheSetOff() {
            Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top, bottom)));
            session.stand(1, 2)
                    .stand(0, 5)
                    .stand(1, 2)
                    .peak(2)
                    .stand(0, 5)
                    .stand(1, 2)
                    .peak(1);
            Optional<Damping> onBottom = top.damping();
            Optional<Damping> onTop = bottom.damping();
            assertEquals(
                    List.of(
                            new Preparation(Optional.of(Plans.IF_SETUP), false, true, Optional.empty(), onBottom),
                            new Preparation(Optional.empty(), false, false, onBottom, onTop)),
                    prepared(session));
            assertTrue(prepared(session).stream().allMatch(Preparation::isAtTerminals));
            assertEquals(
                    onTop,
                    session.said(Request.Undamp.class).stream()
                            .map(Request.Undamp::damping)
                            .findFirst());
            assertEquals(List.of(), session.orders(), "no skirts as long as the resistor is on");
            assertEquals(
                    List.of(check(CheckKind.SKIRTS)),
                    session.stand(0, 5).stand(1, 2).orders());
        }

        @Test
        void aSetThatIsOffIsNotReadyHoweverStillTheMeterStands() {
            Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top)));
            session.stand(1, 60).stand(0.01, 60);
            assertEquals(List.of(), session.begun());
            assertEquals(List.of("T1 top"), session.stand(0.8, 2).begun());
        }

        @Test
        void aKeySaysThatTheHandIsBack() {
            Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top)));
            session.stand(1, 2).key(session.progress::next);
            assertEquals(List.of("T1 top"), session.begun());
        }

        @Test
        void theSameResistorStaysForTheNextAdjuster() {
            PlanStep other = damped("T2 top", Acceptance.MAXIMUM, new Damping("T1 bottom", 22e3));
            Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top, other)));
            session.stand(1, 2).stand(0, 5).stand(0.5, 2).peak(2).stand(0.5, 2);
            assertEquals(List.of("T1 top", "T2 top"), session.begun());
            assertEquals(1, prepared(session).size());
        }

        @Test
        void leadsAreMovedWithTheSetOffAndKnobsWithout() {
            Setup grid = Plans.setup(1400e3);
            Setup aerial = new Setup(
                    grid.generatorHz(),
                    "none",
                    "antenna",
                    "200 pF",
                    grid.dialHz(),
                    "",
                    "detector",
                    grid.level(),
                    new HighTension(false, false));
            PlanStep knob = Plans.with(Plans.step("C2"), Goal.PEAK, grid, false, Acceptance.MAXIMUM);
            PlanStep lead = Plans.with(Plans.step("C1"), Goal.PEAK, aerial, false, Acceptance.MAXIMUM);
            Stage stage = Plans.stage("MW", new RepeatRule(0.2, 1), Plans.step("T1"), knob, lead);
            Session session = started(Plans.plan(stage));
            session.peak(1).stand(0.5, 2).peak(1).stand(0.5, 2);
            assertEquals(
                    List.of(
                            new Preparation(Optional.of(grid), false, false, Optional.empty(), Optional.empty()),
                            new Preparation(Optional.of(aerial), false, true, Optional.empty(), Optional.empty())),
                    prepared(session).subList(1, 3));
        }

        @Test
        void theEndIsTold() {
            Session session = started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), Plans.step("T1"))));
            assertEquals(1, session.peak(1).said(Work.PlanOver.class).size());
        }
    }

    @Nested
    class Keys {

        @Test
        void skipLeavesTheAdjusterAsItIs() {
            Session session = started(Plans.plan(Plans.slugs("T1", "T2")));
            session.key(session.progress::skip).stand(1, 2);
            assertEquals(List.of("T1", "T2"), session.begun());
            assertEquals(List.of("T1"), session.adjusters(action -> action == Adjuster.Action.SKIP));
        }

        @Test
        void backGoesOneStepBack() {
            Session session = started(Plans.plan(Plans.slugs("T1", "T2", "T3")));
            session.peak(1).stand(1, 2).key(session.progress::back).stand(1, 2);
            assertEquals(List.of("T1", "T2", "T1"), session.begun());
        }

        @Test
        void backAtTheBeginningStaysThere() {
            Session session = started(Plans.plan(Plans.slugs("T1", "T2")));
            session.key(session.progress::back).stand(1, 2);
            assertEquals(List.of("T1", "T1"), session.begun());
        }
    }

    /** Cut anywhere, the log alone puts the work back where it was. */
    @Nested
    class Resuming {

        private final Plan plan = Plans.plan(
                Plans.slugs("T2 top", "T2 bottom"), Plans.stage("trap", new RepeatRule(0.2, 1), Plans.step("L9")));

        private Session played() {
            Session session = started(plan);
            session.peak(8).stand(1, 2).peak(1).stand(1, 2);
            session.key(session.progress::back).stand(1, 2);
            session.peak(0.5).stand(1, 2).key(session.progress::skip).stand(1, 2);
            session.peak(0.05).stand(1, 2).peak(0.02).stand(1, 2);
            return session;
        }

        @Test
        void fromAnyPlaceInTheLog() {
            Session session = played();
            for (int cut = 1; cut <= session.log.size(); cut++) {
                AlignmentProgress resumed = new AlignmentProgress(plan);
                resumed.resume(session.log.subList(0, cut));
                assertEquals(session.positions.get(cut - 1), resumed.position(), "cut after record " + cut);
            }
        }

        @Test
        void goesOnWithTheNextAdjuster() {
            Session first = started(plan).peak(8).stand(1, 2);
            AlignmentProgress progress = new AlignmentProgress(plan);
            progress.resume(first.log);
            Session second = new Session(progress).stand(1, 2);
            assertEquals(List.of("T2 bottom"), second.begun());
            assertEquals(1, prepared(second).size(), "the set-up is said again");
        }

        @Test
        void ofAFinishedLogIsOver() {
            Session first = played();
            first.peak(14).stand(1, 2);
            assertTrue(first.isFinished());
            AlignmentProgress progress = new AlignmentProgress(plan);
            progress.resume(first.log);
            assertTrue(progress.isOver());
        }
    }

    @Nested
    class Rocking {

        /** The padder goes through its optimum and back while the gang is swept to and fro, four seconds a sweep. */
        @Test
        void endsAtTheGreatestSweep() {
            PlanStep padder = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
            Session session = started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), padder)));
            double[] padders = {-2, -1.4, -0.8, -0.3, 0.1, 0.6, 1.1, 1.5, 0.9, 0.4, 0.1, 0.05, 0.02, 0};
            double last = 0;
            for (double position : padders) {
                if (session.isFinished()) {
                    break;
                }
                last = position;
                sweep(session, 1 / Math.sqrt(1 + position * position));
            }
            assertTrue(session.isFinished());
            double lossDb = 10 * Math.log10(1 + last * last);
            assertTrue(lossDb < 0.1, "left " + lossDb + " dB from the optimum");
        }

        @Test
        void doesNotEndWhereThePadderWasNeverMoved() {
            PlanStep padder = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
            Session session = started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), padder)));
            for (int i = 0; i < 10; i++) {
                sweep(session, 1);
            }
            assertFalse(session.isFinished());
            assertTrue(session.said(Work.Swept.class).size() >= 9);
        }

        private void sweep(Session session, double greatest) {
            for (int i = -20; i <= 20; i++) {
                double x = i / 8.0;
                session.read(greatest / Math.sqrt(1 + x * x));
            }
        }
    }
}
