package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/** Cut anywhere, the log alone puts the work back where it was. */
class ResumingTest {

    private final Plan plan = Plans.plan(
            Plans.slugs("T2 top", "T2 bottom"), Plans.stage("trap", new RepeatRule(0.2, 1), Plans.step("L9")));

    private Session played() {
        Session session = Session.started(plan);
        session.peak(8).stand(1, 2).peak(1).stand(1, 2);
        session.key(session.progress::back).stand(1, 2);
        session.peak(0.5).stand(1, 2).key(session.progress::skip).stand(1, 2);
        session.peak(0.05).stand(1, 2).peak(0.02).stand(1, 2);
        return session;
    }

    @Test
    void fromAnyPlaceInTheLog() {
        Session session = played();
        for (int cut = 1; cut <= session.log.size(); cut++) {
            AlignmentProgress resumed = new AlignmentProgress(plan);
            resumed.resume(session.log.subList(0, cut));
            assertEquals(session.positions.get(cut - 1), resumed.position(), "cut after record " + cut);
        }
    }

    @Test
    void goesOnWithTheNextAdjuster() {
        Session first = Session.started(plan).peak(8).stand(1, 2);
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.resume(first.log);
        Session second = new Session(progress).stand(1, 2);
        assertEquals(List.of("T2 bottom"), second.begun());
        assertEquals(1, second.prepared().size(), "the set-up is said again");
    }

    /** A best that was forgotten leaves a gain that nobody knows, so that the round is not the last one: after a cut neither. */
    @Test
    void afterAnAdjusterThatWasBegunAgainTheRoundIsStillNotTheLastOne() {
        Session first = Session.started(plan);
        first.peak(0.1).stand(1, 2).best(1.05).passed().stand(1, 21).best(1);
        first.peak(0.05).stand(1, 2);
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.resume(first.log);
        assertEquals(first.progress.position(), progress.position());
        assertEquals(new Position(0, 2, 0), progress.position());
    }

    /** Two logs, the first of them cut between the key for back and the end of its adjuster. */
    @Test
    void fromSeveralLogsForgetsAKeyThatTheFirstOfThemCutOff() {
        Session first = Session.started(plan).peak(8).stand(1, 2);
        first.log.add(new Work.WentBack(0));
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.resume(first.log);
        Session second = new Session(progress).stand(1, 2).peak(1).stand(1, 2);
        List<SessionRecord> both = new ArrayList<>(first.log);
        both.add(new Work.PlanBegun(0, plan.name()));
        both.addAll(second.log);
        AlignmentProgress third = new AlignmentProgress(plan);
        third.resume(both);
        assertEquals(progress.position(), third.position());
    }

    @Test
    void ofAFinishedLogIsOver() {
        Session first = played();
        first.peak(14).stand(1, 2);
        assertTrue(first.isFinished());
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.resume(first.log);
        assertTrue(progress.isOver());
    }

    /** The key was heard, and the power failed before the adjuster was left. */
    @Test
    void afterAKeyForBackThatWasCutTheWorkGoesOnAllTheSame() {
        Session first = Session.started(plan);
        first.peak(8).stand(1, 2);
        first.log.add(new Work.WentBack(0));
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.resume(first.log);
        Session second = new Session(progress).stand(1, 2).peak(1).stand(1, 2);
        assertEquals(List.of("T2 bottom", "T2 top"), second.begun());
        assertEquals(2, progress.position().round());
    }
}
