package org.slugpeak.cli.feed;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.Set;
import org.slugpeak.bridge.generator.FedGenerator;
import org.slugpeak.bridge.generator.GeneratorNews;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.sim.SimSource;
import org.slugpeak.bridge.sim.Tempo;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.cli.align.PlanGuide;
import org.slugpeak.cli.run.SessionRun;
import org.slugpeak.cli.run.SinkOutput;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.GeneratorSetting;
import org.slugpeak.core.generator.LevelUnit;
import org.slugpeak.core.generator.Modulation;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/** A whole job on a set that is made up from a plan, whose generator obeys at once: no time but the simulation's own passes. */
final class FedJob {

    private static final double START_EMF_VOLTS = 30e-6;

    final SimulatedGenerator simulated;
    final List<SessionRecord> log = new ArrayList<>();
    final List<SessionRecord> heardByHand = new ArrayList<>();
    final List<Request.GeneratorStands> really = new ArrayList<>();
    private final Queue<GeneratorNews> news = new ArrayDeque<>();
    private final Plan plan;
    private final long seed;
    private int wishes;
    private int goneFrom = Integer.MAX_VALUE;
    private int goneFor;
    private int liesFrom = Integer.MAX_VALUE;
    private double lie = 1;
    private double highestDbm;
    private int lateLooks;
    private int looksLeft;
    private GeneratorSetting last = new GeneratorSetting(1e6, START_EMF_VOLTS, Modulation.NONE, false);

    FedJob(String planName, String stage, double attenuatorErrorDb, long seed) throws BridgeException {
        Plan whole = PlanFiles.load(planName, OptionalDouble.empty());
        this.plan = whole.withStages(whole.stages().stream()
                .filter(each -> each.name().equals(stage))
                .toList());
        this.simulated = new SimulatedGenerator(attenuatorErrorDb, seed);
        this.seed = seed;
    }

    /** From so many wishes on the link is gone, and comes back with the power having failed so many looks later. */
    FedJob losing(int fromWish, int looks) {
        goneFrom = fromWish;
        goneFor = looks;
        return this;
    }

    /** From so many wishes on the generator's signal changes by another number of decibels than it says. */
    FedJob lying(int fromWish, double decibelsForOne) {
        liesFrom = fromWish;
        lie = decibelsForOne;
        return this;
    }

    /** It obeys, and says that it stands, so many looks after it was told to. */
    FedJob late(int looks) {
        lateLooks = looks;
        return this;
    }

    /** It gives no more. */
    FedJob reachingTo(double dbm) {
        highestDbm = dbm;
        return this;
    }

    FedJob run() throws BridgeException {
        AlignmentProgress progress = new AlignmentProgress(plan);
        progress.withRest();
        progress.withHalvings();
        progress.withGenerator(reach());
        GeneratorSeat seat = GeneratorSeat.taken(new Feeder(generator(), last));
        FedGuide guide = new FedGuide(new PlanGuide(plan, List.of(), progress, seat::feed), seat);
        SimSource source = SimSource.rehearsing(plan, Set.of(), seed, Tempo.unlimited());
        PeakSettings settings = PeakSettings.defaults();
        SessionRun run = new SessionRun(
                source,
                settings,
                guide,
                () -> new SessionStart(1, Instant.EPOCH, "sim:plan", source.measurand(), settings, "test"),
                List.of(
                        new SinkOutput(heardByHand::add),
                        new SinkOutput(log::add),
                        new SinkOutput(record -> source.hand().take(really(record)))));
        run.run();
        return this;
    }

    /** The set gets what stands at the generator's terminals, not what the generator says. */
    private SessionRecord really(SessionRecord record) {
        if (record instanceof Request.GeneratorStands || record instanceof Request.GeneratorFails) {
            GeneratorSetting it = simulated.radiates();
            Request.GeneratorStands stands =
                    new Request.GeneratorStands(record.tNanos(), it.frequencyHz(), it.on() ? it.emfVolts() : 0);
            really.add(stands);
            return stands;
        }
        return record;
    }

    private GeneratorReach reach() {
        return new GeneratorReach(
                true,
                true,
                true,
                10e3,
                30e6,
                LevelUnit.DBM.toEmfVolts(-120),
                LevelUnit.DBM.toEmfVolts(highestDbm),
                LevelUnit.DBM,
                0);
    }

    private FedGenerator generator() {
        return new FedGenerator() {
            @Override
            public GeneratorReach reach() {
                return FedJob.this.reach();
            }

            @Override
            public void want(GeneratorSetting wanted) {
                last = wanted;
                wishes++;
                if (wishes == liesFrom) {
                    simulated.lie(lie);
                }
                if (wishes == goneFrom) {
                    simulated.powerFails();
                    news.add(new GeneratorNews.Fails(true, "it has gone: plug it in again"));
                } else if (wishes < goneFrom) {
                    news.add(new GeneratorNews.Stands(wanted, simulated.obey(wanted)));
                    looksLeft = lateLooks;
                }
            }

            @Override
            public Optional<GeneratorNews> news() {
                if (wishes >= goneFrom && goneFor-- == 0) {
                    goneFrom = Integer.MAX_VALUE;
                    news.add(new GeneratorNews.Stands(last, simulated.obey(last)));
                }
                return looksLeft-- > 0 ? Optional.empty() : Optional.ofNullable(news.poll());
            }
        };
    }

    <T extends SessionRecord> List<T> all(Class<T> kind) {
        return log.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
