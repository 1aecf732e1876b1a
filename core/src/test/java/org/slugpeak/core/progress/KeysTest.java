package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.session.Adjuster;

class KeysTest {

    @Test
    void skipLeavesTheAdjusterAsItIs() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.key(session.progress::skip).stand(1, 2);
        assertEquals(List.of("T1", "T2"), session.begun());
        assertEquals(List.of("T1"), session.adjusters(action -> action == Adjuster.Action.SKIP));
    }

    @Test
    void backGoesOneStepBack() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2", "T3")));
        session.peak(1).stand(1, 2).key(session.progress::back).stand(1, 2);
        assertEquals(List.of("T1", "T2", "T1"), session.begun());
    }

    @Test
    void backAtTheBeginningStaysThere() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.key(session.progress::back).stand(1, 2);
        assertEquals(List.of("T1", "T1"), session.begun());
    }

    @Test
    void nextEndsAnAdjusterWhateverTheFinderHasSaid() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.key(session.progress::next).stand(1, 2);
        assertEquals(List.of("T1", "T2"), session.begun());
        assertEquals(List.of("T1"), session.adjusters(action -> action == Adjuster.Action.DONE));
    }

    @Test
    void skipWhileTheHandLeavesStillLeavesTheAdjusterAsItWas() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.held().key(session.progress::skip).stand(1, 5);
        assertEquals(List.of("T1"), session.adjusters(action -> action == Adjuster.Action.SKIP));
        assertEquals(List.of(), session.adjusters(action -> action == Adjuster.Action.DONE));
    }

    @Test
    void skipBeforeAnythingIsSetLeavesTheAdjusterToo() {
        Session session = new Session(Plans.plan(Plans.slugs("T1", "T2")));
        session.read(1);
        session.key(session.progress::skip).stand(1, 2);
        assertEquals(List.of("T1", "T2"), session.begun());
        assertEquals(List.of("T1"), session.adjusters(action -> action == Adjuster.Action.SKIP));
    }

    /** The order to end an adjuster is given once, however often a key is pressed before the log knows of it. */
    @Test
    void aSecondKeyBeforeTheEndIsRecordedOrdersNothing() {
        AlignmentProgress progress = Session.started(Plans.plan(Plans.slugs("T1", "T2"))).progress;
        progress.next();
        assertEquals(Optional.of(new Order.End(Adjuster.Action.DONE, OptionalDouble.empty())), progress.nextOrder());
        progress.next();
        progress.skip();
        progress.back();
        assertEquals(Optional.empty(), progress.nextOrder());
    }

    @Test
    void afterThePlanIsThroughNoKeyOrdersAnything() {
        Session session = Session.started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), Plans.step("T1"))))
                .peak(1);
        int soFar = session.log.size();
        session.key(session.progress::next).key(session.progress::skip).key(session.progress::back);
        assertEquals(soFar, session.log.size());
        assertTrue(session.progress.isOver());
    }
}
