package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
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
}
