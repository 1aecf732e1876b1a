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
import org.slugpeak.core.session.Work;

class RockingTest {

    /** The padder goes through its optimum and back while the gang is swept to and fro, four seconds a sweep. */
    @Test
    void endsAtTheGreatestSweep() {
        PlanStep padder = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), padder)));
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
    void goesOnPastTheBeginningWhereThePadderWasTurnedTheWrongWayFirst() {
        PlanStep padder = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), padder)));
        double[] wrongWayAndBack = {-1, -1.3, -1.6, -1.9, -1.6, -1.3, -1.01, -0.98};
        for (double position : wrongWayAndBack) {
            sweep(session, 1 / Math.sqrt(1 + position * position));
        }
        assertFalse(session.isFinished());
        double[] onAndBack = {-0.6, -0.3, 0, 0.3, 0.6, 1, 0.6, 0.2, 0.05, 0, 0};
        for (double position : onAndBack) {
            sweep(session, 1 / Math.sqrt(1 + position * position));
        }
        assertTrue(session.isFinished());
    }

    @Test
    void doesNotEndWhereThePadderWasNeverMoved() {
        PlanStep padder = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("MW", new RepeatRule(0.2, 1), padder)));
        for (int i = 0; i < 10; i++) {
            sweep(session, 1);
        }
        assertFalse(session.isFinished());
        assertTrue(session.said(Work.Swept.class).size() >= 9);
    }

    /** A gain control that follows late shows 0.16 dB more one way than the other. */
    @Test
    void endsWhereSweepsOneWayShowLessThanTheOtherWay() {
        PlanStep trimmer = Plans.with(Plans.step("C1"), Goal.PEAK, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("SW", new RepeatRule(0.2, 1), trimmer)));
        double[] trimmers = {-0.8, -0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.05, 0};
        double share = Math.pow(10, -0.16 / 20);
        boolean to = true;
        for (double position : trimmers) {
            sweep(session, (to ? 1 : share) / Math.sqrt(1 + position * position));
            to = !to;
        }
        assertTrue(session.isFinished());
    }

    /** Behind a gain control, what stands on the signal reads more than what sweeps across it. */
    @Test
    void takesWhatStoodOnTheSignalBeforeForNoSweep() {
        PlanStep trimmer = Plans.with(Plans.step("C1"), Goal.PEAK, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("SW", new RepeatRule(0.2, 1), trimmer)));
        double[] trimmers = {-0.8, -0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.05, 0};
        double share = Math.pow(10, -0.3 / 20);
        for (double position : trimmers) {
            sweep(session, share / Math.sqrt(1 + position * position));
        }
        assertTrue(session.isFinished());
    }

    /** What a weak signal gains is small beside the rest of its detector, which gains nothing. */
    @Test
    void comparesSweepsAboveTheRestingReading() {
        PlanStep trimmer = Plans.with(Plans.step("C1"), Goal.PEAK, Plans.IF_SETUP, true, Acceptance.MAXIMUM);
        AlignmentProgress progress =
                new AlignmentProgress(Plans.plan(Plans.stage("SW", new RepeatRule(0.2, 1), trimmer)));
        progress.withRest();
        Session session = new Session(progress).stand(1, 2).rested(0.4).stand(1, 3);
        sweep(session, 0.4, 0.2);
        sweep(session, 0.4, 0.1);
        sweep(session, 0.4, 0.1);
        List<Work.Swept> swept = session.said(Work.Swept.class);
        assertEquals(-6.02, swept.get(swept.size() - 1).belowBestDb(), 0.1);
    }

    private void sweep(Session session, double rest, double greatest) {
        for (int i = -20; i <= 20; i++) {
            double x = i / 4.0;
            session.read(rest + greatest / Math.sqrt(1 + x * x));
        }
    }

    private void sweep(Session session, double greatest) {
        for (int i = -20; i <= 20; i++) {
            double x = i / 8.0;
            session.read(greatest / Math.sqrt(1 + x * x));
        }
    }
}
