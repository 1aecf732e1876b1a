package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.session.Guard;

/** A pair that is not over-coupled has nothing left to gain after a round; the bound is derived in CouplingWatch. */
class OverCouplingTest {

    private Session rounds(Plan plan, double... gains) {
        Session session = Session.started(plan);
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
        Session session = Session.started(Plans.plan(stage));
        for (double gain : new double[] {5, 3, 2.4, 0.8, 1.5, 0.7}) {
            session.peak(gain).stand(1, 2).stand(3, 2).stand(1, 2);
        }
        assertTrue(session.guards().isEmpty());
    }
}
