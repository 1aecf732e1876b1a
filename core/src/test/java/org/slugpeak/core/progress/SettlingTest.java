package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.RepeatRule;

class SettlingTest {

    @Test
    void waitsUntilTheReadingStands() {
        Session session = new Session(Plans.plan(Plans.slugs("T1")));
        for (int i = 0; i < 60; i++) {
            session.read(1 + i * 0.05);
        }
        assertTrue(session.begun().isEmpty());
        assertEquals(List.of("T1"), session.stand(4, 2).begun());
    }

    @Test
    void saysHowGeneratorDialAndMeterStand() {
        Preparation first =
                new Preparation(Optional.of(Plans.IF_SETUP), true, false, Optional.empty(), Optional.empty());
        assertEquals(
                List.of(first), Session.started(Plans.plan(Plans.slugs("T1"))).prepared());
    }

    @Test
    void afterAChangeOfTheGeneratorTheReadingMustShowIt() {
        PlanStep high = Plans.with(Plans.step("C2"), Goal.ON_DIAL, Plans.setup(1400e3), false, Acceptance.MAXIMUM);
        Session session = Session.started(Plans.plan(
                Plans.stage("IF", new RepeatRule(0.2, 1), Plans.step("T1")),
                Plans.stage("MW", new RepeatRule(0.2, 1), high)));
        session.peak(3).stand(1, 5);
        assertEquals(List.of("T1"), session.begun(), "nothing shows that the generator was set");
        session.stand(0.4, 2);
        assertEquals(List.of("T1", "C2"), session.begun());
    }

    @Test
    void aKeySaysThatItIsDoneWhereNothingShows() {
        Session session = new Session(Plans.plan(Plans.slugs("T1")));
        session.read(1);
        session.key(session.progress::next);
        assertEquals(List.of("T1"), session.begun());
    }
}
