package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/** Common practice, no source: IF primaries stand at high tension, so nothing is clipped to a set that is on. */
class HandsInTheSetTest {

    private PlanStep damped(String adjuster, Acceptance acceptance, Damping damping) {
        return new PlanStep(adjuster, Goal.PEAK, Plans.IF_SETUP, false, Optional.of(damping), acceptance, List.of());
    }

    private final PlanStep top = damped("T1 top", Acceptance.SKIRTS, new Damping("T1 bottom", 22e3));
    private final PlanStep bottom = damped("T1 bottom", Acceptance.SKIRTS, new Damping("T1 top", 22e3, false));

    @Test
    void dampingGoesOnAndOverAndOffWithTheSetOff() {
        Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top, bottom)));
        session.stand(1, 2)
                .stand(0, 5)
                .stand(1, 2)
                .peak(2)
                .stand(0, 5)
                .stand(1, 2)
                .peak(1);
        Optional<Damping> onBottom = top.damping();
        Optional<Damping> onTop = bottom.damping();
        assertEquals(
                List.of(
                        new Preparation(Optional.of(Plans.IF_SETUP), false, true, Optional.empty(), onBottom),
                        new Preparation(Optional.empty(), false, false, onBottom, onTop)),
                session.prepared());
        assertTrue(session.prepared().stream().allMatch(Preparation::isAtTerminals));
        assertEquals(
                onTop,
                session.said(Request.Undamp.class).stream()
                        .map(Request.Undamp::damping)
                        .findFirst());
        assertEquals(List.of(), session.orders(), "no skirts as long as the resistor is on");
        assertEquals(
                List.of(Session.check(CheckKind.SKIRTS)),
                session.stand(0, 5).stand(1, 2).orders());
    }

    @Test
    void aSetThatIsOffIsNotReadyHoweverStillTheMeterStands() {
        Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top)));
        session.stand(1, 60).stand(0.01, 60);
        assertEquals(List.of(), session.begun());
        assertEquals(List.of("T1 top"), session.stand(0.8, 2).begun());
    }

    @Test
    void aKeySaysThatTheHandIsBack() {
        Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top)));
        session.stand(1, 2).key(session.progress::next);
        assertEquals(List.of("T1 top"), session.begun());
    }

    @Test
    void theSameResistorStaysForTheNextAdjuster() {
        PlanStep other = damped("T2 top", Acceptance.MAXIMUM, new Damping("T1 bottom", 22e3));
        Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top, other)));
        session.stand(1, 2).stand(0, 5).stand(0.5, 2).peak(2).stand(0.5, 2);
        assertEquals(List.of("T1 top", "T2 top"), session.begun());
        assertEquals(1, session.prepared().size());
    }

    @Test
    void leadsAreMovedWithTheSetOffAndKnobsWithout() {
        Setup grid = Plans.setup(1400e3);
        Setup aerial = new Setup(
                grid.generatorHz(),
                "none",
                "antenna",
                "200 pF",
                grid.dialHz(),
                "",
                "detector",
                grid.level(),
                new HighTension(false, false));
        PlanStep knob = Plans.with(Plans.step("C2"), Goal.PEAK, grid, false, Acceptance.MAXIMUM);
        PlanStep lead = Plans.with(Plans.step("C1"), Goal.PEAK, aerial, false, Acceptance.MAXIMUM);
        Stage stage = Plans.stage("MW", new RepeatRule(0.2, 1), Plans.step("T1"), knob, lead);
        Session session = Session.started(Plans.plan(stage));
        session.peak(1).stand(0.5, 2).peak(1).stand(0.5, 2);
        assertEquals(
                List.of(
                        new Preparation(Optional.of(grid), false, false, Optional.empty(), Optional.empty()),
                        new Preparation(Optional.of(aerial), false, true, Optional.empty(), Optional.empty())),
                session.prepared().subList(1, 3));
    }

    @Test
    void theNextStageIsSetUpOnceTheSkirtsWereComparedWithoutTheResistor() {
        Setup medium = Plans.setup(1400e3);
        PlanStep next = Plans.with(Plans.step("C2"), Goal.ON_DIAL, medium, false, Acceptance.MAXIMUM);
        Session session = new Session(
                Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top), Plans.stage("MW", RepeatRule.USUAL, next)));
        session.stand(1, 2)
                .key(session.progress::next)
                .peak(2)
                .stand(0, 5)
                .stand(1, 2)
                .checkOver();
        session.stand(1, 2).stand(0.4, 2);
        Preparation asked = new Preparation(Optional.of(medium), false, false, Optional.empty(), Optional.empty());
        assertEquals(asked, session.prepared().get(session.prepared().size() - 1));
        assertEquals(List.of("T1 top", "C2"), session.begun());
    }

    /** The adjusters of the stage are done: there is none to leave or to go back from. */
    @Test
    void whileTheResistorComesOffAKeyLeadsToTheSkirtsOrNowhere() {
        Session session = new Session(Plans.plan(Plans.stage("IF", new RepeatRule(0.2, 1), top)));
        session.stand(1, 2).key(session.progress::next).peak(2);
        session.key(session.progress::back);
        assertEquals(List.of(), session.said(Work.WentBack.class));
        assertEquals(List.of(), session.orders());
        session.key(session.progress::skip);
        assertEquals(List.of(Session.check(CheckKind.SKIRTS)), session.orders());
    }
}
