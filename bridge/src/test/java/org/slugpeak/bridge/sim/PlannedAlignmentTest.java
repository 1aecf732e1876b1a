package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.ReceiverDesign;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/** The whole IF job of the demonstration set, led by its plan: no key is touched. */
class PlannedAlignmentTest {

    private static final int SEEDS = 100;
    private static final double LONGEST_SECONDS = 1200;

    /** One job: bench, analysis and plan, wired as a session is. */
    private static final class Job implements Order.Matcher {

        private final SimulatedReceiver receiver;
        private final SimSource source;
        private final AlignmentProgress progress;
        private final Analysis analysis;
        private final List<SessionRecord> log = new ArrayList<>();
        private boolean finished;

        Job(Plan plan, ReceiverDesign design, long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            receiver = new SimulatedReceiver(design, Set.of(), random.nextLong());
            Script.prepare(receiver, false, Optional.empty());
            SimulatedMeter meter = new SimulatedMeter(MeterModel.CONVERTER, random.split());
            SimulatedHand hand = new SimulatedHand(HandModel.PRACTISED, random.split());
            OtherHand other = new OtherHand(receiver, hand, random.split());
            List<Chore> chores = List.of(new TurningChore(receiver, hand));
            source = new SimSource(new Bench(receiver, meter, hand, other, chores), Tempo.unlimited());
            progress = new AlignmentProgress(plan);
            progress.withRest();
            analysis = new Analysis(PeakSettings.defaults(), record -> {
                log.add(record);
                progress.take(record);
                source.hand().take(record);
            });
        }

        Job run() throws BridgeException {
            Feed feed = new Feed(this);
            while (!finished && source.poll(0, feed) != Progress.ENDED) {
                boolean tooLong = !log.isEmpty() && log.get(log.size() - 1).tNanos() > LONGEST_SECONDS * 1e9;
                if (tooLong) {
                    break;
                }
            }
            return this;
        }

        private void obey() {
            for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
                order.get().match(this);
            }
        }

        @Override
        public void begin(Order.Begin it) {
            analysis.command(new Instruction.Find(it.seek()));
            analysis.nextAdjuster(it.adjuster());
        }

        @Override
        public void end(Order.End it) {
            analysis.adjusterEnded(it.action());
        }

        @Override
        public void say(Order.Say it) {
            analysis.tell(it.what());
        }

        @Override
        public void level(Order.Level it) {
            analysis.command(new Instruction.Level(it.command()));
        }

        @Override
        public void finish(Order.Finish it) {
            finished = true;
        }

        long adjustersDone() {
            return log.stream()
                    .filter(record -> record instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.DONE)
                    .count();
        }
    }

    /** Lets the plan lead after each reading. */
    private static final class Feed extends AnalysisListener {

        private final Job job;

        Feed(Job job) {
            super(job.analysis);
            this.job = job;
        }

        @Override
        public void reading(Reading reading) {
            super.reading(reading);
            job.obey();
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {
            throw new AssertionError(detail);
        }

        @Override
        public void garbled(String where, String problem) {
            throw new AssertionError(problem);
        }
    }

    private static Plan ifPlan() throws BridgeException {
        Plan whole = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
        return new Plan(
                whole.name(),
                whole.chassis(),
                whole.valves(),
                whole.intermediates(),
                whole.bands(),
                whole.stages().subList(0, 1),
                whole.notes());
    }

    @Test
    void endsWithinATenthOfADecibelInNinetyFiveOfAHundredSets(TestReporter reporter) throws BridgeException {
        Plan plan = ifPlan();
        int good = 0;
        int endless = 0;
        List<String> bad = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            Job job = new Job(plan, Tarnfield.design(), seed).run();
            double leftDb = job.receiver.lossDb();
            endless += job.finished ? 0 : 1;
            if (job.finished && job.adjustersDone() >= 8 && leftDb < 0.1) {
                good++;
            } else {
                bad.add(String.format(
                        java.util.Locale.ROOT,
                        "seed %d: finished %s, %d adjusters, %.3f dB left",
                        seed,
                        job.finished,
                        job.adjustersDone(),
                        leftDb));
            }
        }
        assertEquals(0, endless, "jobs that did not come to an end; " + bad);
        reporter.publishEntry("sets within 0.1 dB, of " + SEEDS, String.valueOf(good));
        assertTrue(
                good >= 95, good + " of 100 were good; " + bad.stream().limit(6).toList());
    }

    /** The same set with other transformers; the coupling is in units of the critical one. */
    private static ReceiverDesign coupled(double kappa) {
        ReceiverDesign usual = Tarnfield.design();
        double critical = CoupledPair.criticalCoupling(
                usual.first().primary().q(), usual.first().secondary().q());
        CoupledPair pair = usual.first().withCoupling(kappa * critical);
        return new ReceiverDesign(
                usual.intermediateHz(),
                pair,
                pair,
                usual.conversionSiemens(),
                usual.stageSiemens(),
                usual.detector(),
                usual.gainControl(),
                usual.slug(),
                usual.front(),
                usual.audio(),
                usual.noiseOhm(),
                usual.hand(),
                usual.misalignment());
    }

    private static boolean warnsOfCoupling(SessionRecord record) {
        return record instanceof Guard.LateGain
                || (record instanceof Work.RoundEnded end && end.verdict() == RoundVerdict.CREEPING);
    }

    private static long warned(double kappa, int firstSeed, int sets) throws BridgeException {
        Plan plan = ifPlan();
        long count = 0;
        for (int seed = firstSeed; seed < firstSeed + sets; seed++) {
            Job job = new Job(plan, coupled(kappa), seed).run();
            count += job.log.stream().anyMatch(PlannedAlignmentTest::warnsOfCoupling) ? 1 : 0;
        }
        return count;
    }

    /**
     * Peaking slug by slug cannot be right there; where the first round ends on a hump already, only the skirts tell. Five sets in six
     * are expected (51 of 60, seeds from 7000).
     */
    @Test
    void warnsOfTwoAndAHalfTimesCriticalCouplingInMostSets() throws BridgeException {
        long count = warned(2.5, 7000, 40);
        assertTrue(count >= 30, count + " of 40");
    }

    @Test
    void isSilentAtCriticalCoupling() throws BridgeException {
        assertEquals(0, warned(1, 7000, 25));
    }
}
