package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.session.Guard;

class TwoMaximaTest {

    @Test
    void twoMaximaAskWhichOne() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.twoPeaks().held().stand(1, 5);
        assertEquals(2, session.guards().size());
        assertEquals(List.of("T1"), session.begun(), "not yet chosen");
        session.stand(1, 10);
        assertEquals(List.of("T1", "T2"), session.begun(), "staying chooses it");
    }

    @Test
    void turningOnIsNotChoosing() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.twoPeaks().held().stand(1, 5).stand(0.5, 5).stand(0.9, 8);
        assertEquals(List.of("T1"), session.begun());
        session.held().key(session.progress::next).stand(1, 3);
        assertEquals(List.of("T1", "T2"), session.begun());
    }

    /** Whoever turns on from one of them is in the same travel: the other is still there, and what the finder said still counts. */
    @Test
    void areRememberedByWhoeverTurnsOn() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1", "T2")));
        session.twoPeaks().held().best(1.05).passed().stand(1, 2).stand(0.5, 1).stand(1, 7);
        assertEquals(1, session.said(Guard.StillShort.class).size());
        session.held();
        assertEquals(2, session.said(Guard.Choice.class).size());
    }
}
