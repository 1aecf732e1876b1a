package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.session.Instruction;

class ChecksTest {

    @Test
    void skirtsAreComparedWhereThePlanWantsIt() {
        PlanStep wide = Plans.with(Plans.step("T1"), Goal.PEAK, Plans.IF_SETUP, false, Acceptance.SKIRTS);
        Session session = Session.started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), wide)));
        session.peak(2);
        assertEquals(List.of(Session.check(CheckKind.SKIRTS)), session.orders());
        assertFalse(session.isFinished());
        assertTrue(session.checkOver().isFinished());
    }

    @Test
    void aKeySaysThatTheMoveOfACheckIsMadeAndAnotherDropsIt() {
        PlanStep wide = Plans.with(Plans.step("T1"), Goal.PEAK, Plans.IF_SETUP, false, Acceptance.SKIRTS);
        Session session = Session.started(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), wide)));
        session.peak(2).key(session.progress::next);
        assertFalse(session.isFinished());
        session.key(session.progress::skip);
        assertEquals(
                List.of(
                        Session.check(CheckKind.SKIRTS),
                        new Instruction.Level(LevelCommand.done()),
                        new Instruction.Level(LevelCommand.cancel())),
                session.orders());
        assertTrue(session.isFinished());
    }

    @Test
    void theRestingReadingComesBeforeEveryAdjuster() {
        AlignmentProgress progress = new AlignmentProgress(Plans.plan(Plans.slugs("T2 top")));
        progress.withRest();
        Session session = new Session(progress).stand(1, 20);
        assertEquals(List.of(Session.check(CheckKind.REST)), session.orders());
        assertEquals(List.of(), session.begun());
        session.checkOver().stand(1, 3);
        assertEquals(List.of("T2 top"), session.begun());
    }
}
