package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.session.Guard;

/** Nobody must wait for a word that cannot come. */
class StuckTest {

    private final Session session = Session.started(Plans.plan(Plans.slugs("T1 top")));

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
