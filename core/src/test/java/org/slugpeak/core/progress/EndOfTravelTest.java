package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.session.Guard;

class EndOfTravelTest {

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void isToldWhetherTheGangIsRockedOrNot(boolean rock) {
        PlanStep step = Plans.with(Plans.step("C3"), Goal.ON_DIAL, Plans.IF_SETUP, rock, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(Plans.stage("MW", RepeatRule.USUAL, step)));
        session.noPeak(NoPeakReason.END_OF_TRAVEL);
        assertTrue(session.guards().get(0) instanceof Guard.EndOfTravel);
    }

    @ParameterizedTest
    @EnumSource(value = NoPeakReason.class, names = "END_OF_TRAVEL", mode = EnumSource.Mode.EXCLUDE)
    void isTheOnlyReasonForAPersonToJudge(NoPeakReason other) {
        Session session = Session.started(Plans.plan(Plans.slugs("T1")));
        assertEquals(List.of(), session.noPeak(other).guards());
    }

    @Test
    void isNotToldOfAnAdjusterThatIsHeld() {
        Session session = Session.started(Plans.plan(Plans.slugs("T1")));
        assertEquals(
                List.of(), session.held().noPeak(NoPeakReason.END_OF_TRAVEL).guards());
    }
}
