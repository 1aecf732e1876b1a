package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.session.Work;

class HandsOffTest {

    @Test
    void changeIsReportedWithItsSign() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1")));
        session.held().stand(0.95, 3);
        double changeDb = session.said(Work.HandEffect.class).get(0).changeDb();
        assertEquals(20 * Math.log10(0.95), changeDb, 0.01);
    }

    @Test
    void smallChangeIsNot() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1")));
        session.held().stand(0.99, 3);
        assertTrue(session.said(Work.HandEffect.class).isEmpty());
    }

    @Test
    void changeAroundAZeroIsNoneInDecibels() {
        PlanStep zero = Plans.with(Plans.step("T6 top"), Goal.ZERO, Plans.IF_SETUP, false, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("FM", RepeatRule.USUAL, zero)));
        session.held().stand(0.95, 3);
        assertTrue(session.said(Work.HandEffect.class).isEmpty());
    }
}
