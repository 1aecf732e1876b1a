package org.slugpeak.cli.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/** Whole jobs at a simulated set whose generator obeys, with an attenuator that errs. */
class FedAlignTest {

    /** Rest, level, two halvings and five steps, each with its way back. */
    private static final int LAW_IS_KNOWN_BY = 14;

    private static FedJob job(long seed) throws BridgeException {
        return new FedJob("tarnfield-54a", "AM IF", 0.1, seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theIfJobIsDoneAndNobodyIsAskedForTheGenerator(long seed) throws BridgeException {
        FedJob job = job(seed).run();
        assertEquals(1, job.all(Work.PlanOver.class).size());
        assertTrue(job.all(Caution.Checked.class).stream().anyMatch(it -> it.check() == CheckKind.REST));
        assertTrue(job.all(Caution.Checked.class).stream().anyMatch(it -> it.check() == CheckKind.LEVEL));
        assertTrue(job.all(Request.CutGenerator.class).isEmpty());
        assertTrue(job.all(Request.Asked.class).isEmpty());
        assertTrue(job.all(Request.GeneratorFails.class).isEmpty());
        assertTrue(job.all(Request.GeneratorStands.class).stream().allMatch(it -> it.hz() == 455e3));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theLawIsMeasuredWithoutAHandAndTheReadingIsHeldByIt(long seed) throws BridgeException {
        FedJob job = job(seed).run();
        assertEquals(1, job.all(Work.PlanOver.class).size());
        assertEquals(
                RoundVerdict.CONVERGED, last(job.all(Work.RoundEnded.class)).verdict());
        assertEquals(
                CheckKind.DETECTOR_LAW.moves() + 1,
                job.all(CurveWork.LawStep.class).size());
        assertTrue(job.heardByHand.stream()
                .noneMatch(it -> it instanceof Request.Asked || it instanceof Request.CutGenerator));
        assertTrue(job.all(Request.GeneratorFails.class).isEmpty());
        assertEquals(
                List.of(),
                job.all(Adjuster.class).stream().filter(it -> !isInWindow(it)).toList());
    }

    /** A generator may take longer than the level watch does to judge a turn that a hand has made. */
    @ParameterizedTest
    @CsvSource({"1, 150", "2, 150", "3, 700", "4, 700"})
    void whatWasGainedIsTheSameWhereTheGeneratorTakesItsTime(long seed, int looks) throws BridgeException {
        double atOnceDb = gainedDb(job(seed).run());
        assertEquals(atOnceDb, gainedDb(job(seed).late(looks).run()), 0.5, "by another hand and with another noise");
    }

    private static double gainedDb(FedJob job) {
        assertEquals(1, job.all(Work.PlanOver.class).size());
        return job.all(Adjuster.class).stream()
                .mapToDouble(Adjuster::gainDb)
                .filter(db -> !Double.isNaN(db))
                .sum();
    }

    @Test
    void aLinkThatIsCutIsSaidAndTheAdjusterBegunAnew() throws BridgeException {
        FedJob job = job(1).losing(14, 400).run();
        assertEquals(1, job.all(Work.PlanOver.class).size());
        assertFalse(job.all(Request.GeneratorFails.class).isEmpty());
        assertFalse(job.all(Guard.BegunAgain.class).isEmpty());
        assertTrue(job.all(Caution.Suspected.class).isEmpty());
    }

    /** Three decibels or twelve for each six that it says; the law was measured before. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2})
    void aGeneratorThatLiesIsToldOfAndTheReadingCounts(double decibelsForOne) throws BridgeException {
        FedJob job = job(1).lying(LAW_IS_KNOWN_BY, decibelsForOne).run();
        List<Request.GeneratorFails> doubts = job.all(Request.GeneratorFails.class);
        assertFalse(doubts.isEmpty());
        assertFalse(doubts.get(0).gone());
        Request.GeneratorChanged turn = job.all(Request.GeneratorChanged.class).stream()
                .filter(it -> it.tNanos() > lawNanos(job))
                .findFirst()
                .orElseThrow();
        assertEquals(reallyDb(job, turn), turn.changeDb(), 0.5);
        assertEquals(turn.tNanos(), doubts.get(0).tNanos());
    }

    private static long lawNanos(FedJob job) {
        return last(job.all(CurveWork.LawStep.class)).tNanos();
    }

    /** By how much the signal changed for which the record of a turn stands. */
    private static double reallyDb(FedJob job, Request.GeneratorChanged turn) {
        List<Double> before = job.really.stream()
                .filter(it -> it.tNanos() < turn.tNanos() && it.emfVolts() > 0)
                .map(Request.GeneratorStands::emfVolts)
                .toList();
        return Decibels.of(before.get(before.size() - 1) / before.get(before.size() - 2));
    }

    @Test
    void aWindowThatTheGeneratorCannotReachIsSaidOnceAndTheWorkGoesOn() throws BridgeException {
        FedJob job = job(1).reachingTo(-95).run();
        List<Caution.WindowMissed> missed = job.all(Caution.WindowMissed.class);
        assertEquals(1, missed.size());
        assertTrue(missed.get(0).missedDb() < 0, missed.toString());
        assertTrue(missed.get(0).tNanos() < 20e9, "not after the patience of somebody who waits for nothing");
        assertFalse(job.all(Adjuster.class).isEmpty());
    }

    private static <T> T last(List<T> all) {
        return all.get(all.size() - 1);
    }

    /** Where the generator was away an adjuster would begin or end at the resting reading, and its gain would be tens of decibels. */
    private static boolean isInWindow(Adjuster it) {
        double level = it.action() == Adjuster.Action.BEGIN ? it.before() : it.after();
        double above = Math.abs(level + 0.256);
        return above > 0.2 && above < 2;
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10, 14})
    void whereverTheLinkIsCutNothingIsRecordedWrong(int wish) throws BridgeException {
        FedJob job = job(1).losing(wish, 400).run();
        assertEquals(1, job.all(Work.PlanOver.class).size());
        assertTrue(job.all(Caution.Suspected.class).isEmpty(), () -> "" + job.all(Caution.Suspected.class));
        assertEquals(
                List.of(),
                job.all(Adjuster.class).stream().filter(it -> !isInWindow(it)).toList());
        assertEquals(
                RoundVerdict.CONVERGED, last(job.all(Work.RoundEnded.class)).verdict());
        double rest = job.all(Caution.Checked.class).stream()
                .filter(it -> it.check() == CheckKind.REST)
                .findFirst()
                .orElseThrow()
                .figures()
                .figure();
        assertEquals(-0.256, rest, 0.005);
    }
}
