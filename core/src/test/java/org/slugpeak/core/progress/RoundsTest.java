package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.session.Work;

/** Common practice: from the detector back, repeated until a whole round changes less than 0.2 dB. */
class RoundsTest {

    @Test
    void goOnUntilAWholeRoundGainsLessThanTwoTenths() {
        Session session = Session.started(Plans.plan(Plans.slugs("T2 top", "T2 bottom")));
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
                List.of(1, 2, 3), rounds.stream().map(Work.RoundEnded::round).toList());
        assertEquals("IF", rounds.get(0).stage());
        assertEquals(9, rounds.get(0).gainDb(), 1e-9);
        assertEquals(0.25, rounds.get(1).gainDb(), 1e-9);
        assertEquals(0.07, rounds.get(2).gainDb(), 1e-9);
    }

    @Test
    void countALossAsMuchAsAGain() {
        Session session = Session.started(Plans.plan(Plans.slugs("T2 top", "T2 bottom")));
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
                Session.started(Plans.plan(stage)).peak(3).stand(1, 2).peak(2).stand(1, 2);
        assertTrue(session.isFinished());
        assertEquals(RoundVerdict.STILL_GAINING, verdict(session, 1));
    }

    @Test
    void thatCreepAreATellTaleOfAnOverCoupledTransformer() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1 top", "T1 bottom")));
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
        assertTrue(Session.started(Plans.plan(trap)).peak(14).isFinished());
    }

    @Test
    void ofADipCountLessAsMore() {
        PlanStep trap = Plans.with(Plans.step("L9"), Goal.DIP, Plans.IF_SETUP, false, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("trap", RepeatRule.USUAL, trap)));
        session.peak(-14).stand(1, 2);
        assertFalse(session.isFinished(), "14 dB less is much gained");
        session.peak(-0.1);
        assertTrue(session.isFinished());
    }

    @Test
    void ofTheLastStageEndThePlanAndThatIsTold() {
        Session session = Session.started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), Plans.step("T1"))));
        assertEquals(1, session.peak(1).said(Work.PlanOver.class).size());
    }

    @Test
    void whatWasGainedAtSeveralFrequenciesIsNotAdded() {
        PlanStep low = Plans.with(Plans.step("L5"), Goal.PEAK, Plans.setup(600e3), false, Acceptance.MAXIMUM);
        PlanStep high = Plans.with(Plans.step("C5"), Goal.PEAK, Plans.setup(1400e3), false, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), low, high)));
        session.peak(3).stand(0.3, 3).stand(1, 2).peak(2).stand(1, 2);
        assertTrue(session.isFinished());
        assertEquals(Double.NaN, session.said(Work.RoundEnded.class).get(0).gainDb());
        assertEquals(
                List.of("MW, 600 kHz", "MW, 1400 kHz"),
                session.said(Work.PathBegun.class).stream()
                        .map(Work.PathBegun::path)
                        .toList());
    }

    @Test
    void thePathOfTheSignalIsToldOnceWhereItStaysTheSame() {
        Session session = Session.started(Plans.plan(Plans.slugs("T2 top", "T2 bottom")));
        session.peak(8).stand(1, 2).peak(1).stand(1, 2).peak(0.1).stand(1, 2);
        assertEquals(
                List.of("IF"),
                session.said(Work.PathBegun.class).stream()
                        .map(Work.PathBegun::path)
                        .toList());
    }

    /** A discriminator: the primary is peaked, the secondary set to zero, where a reading of next to nothing has no decibels. */
    @Test
    void doNotGoOnForTheSakeOfAZero() {
        PlanStep secondary = Plans.with(Plans.step("T6 top"), Goal.ZERO, Plans.IF_SETUP, false, Acceptance.MAXIMUM);
        Session session =
                Session.started(Plans.plan(Plans.stage("FM", RepeatRule.USUAL, Plans.step("T6 bottom"), secondary)));
        session.peak(8).stand(1, 2).peak(-40).stand(1, 2);
        assertFalse(session.isFinished(), "the primary gained 8 dB");
        session.peak(0.1).stand(1, 2).peak(-12).stand(1, 2);
        assertTrue(session.isFinished());
        List<Work.RoundEnded> rounds = session.said(Work.RoundEnded.class);
        assertEquals(8, rounds.get(0).gainDb(), 1e-9);
        assertEquals(RoundVerdict.CONVERGED, rounds.get(1).verdict());
    }
}
