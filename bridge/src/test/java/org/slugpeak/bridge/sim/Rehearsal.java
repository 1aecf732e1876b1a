package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.rehearsal.PlannedScene;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.rehearsal.Role;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.word.Refused;

/** A plan carried out at the set that is made up from it, wired as a session is; each step is held against the truth as it ends. */
final class Rehearsal implements Order.Matcher {

    /** One slug is within 0.1 dB over +-0.99 kHz at 455 kHz (R5 of the reference tables for rehearsals), and there are several. */
    private static final double IF_ZONE = 2 * 0.99 / 455;

    /** Lower notes are not heard, textbook. */
    private static final double LOWEST_NOTE_HZ = 20;

    /** A day's work. */
    private static final double LONGEST_SECONDS = 30_000;

    /**
     * What a step came to.
     *
     * @param missingDb to its optimum, the others as they were; NaN for a zero
     * @param zeroOffHz from the generator's frequency; NaN for all others
     * @param dialOff as a fraction; NaN where no dial was to be met
     * @param beatHz note that is left; NaN for all but a zero beat
     */
    record Outcome(
            PlannedScene scene, Adjuster ended, double missingDb, double zeroOffHz, double dialOff, double beatHz) {

        /** Within 0.15 dB of a peak and 0.3 dB of a dip, 2 kHz of a zero, 0.3 % of a mark or what 0.1 dB of an IF is worth; unheard. */
        boolean isMet() {
            double nearDb = scene.role() == Role.TRAP ? 0.3 : 0.15;
            double nearDial = Math.max(0.003, IF_ZONE * scene.intermediateHz() / scene.signalHz());
            boolean near = Double.isNaN(dialOff) ? !(missingDb > nearDb) : Math.abs(dialOff) <= nearDial;
            return ended.action() == Adjuster.Action.DONE
                    && near
                    && !(Math.abs(zeroOffHz) > 2e3)
                    && !(beatHz > LOWEST_NOTE_HZ);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s %s: %.3f dB, %.0f Hz, %.3f %%, %.0f Hz",
                    scene.name(),
                    ended.action(),
                    missingDb,
                    zeroOffHz,
                    100 * dialOff,
                    beatHz);
        }
    }

    private final String name;
    private final PlannedSet set;
    private final SimSource source;
    private final AlignmentProgress progress;
    private final Analysis analysis;
    private final List<SessionRecord> log = new ArrayList<>();
    private final List<Outcome> outcomes = new ArrayList<>();
    private Optional<PlanStep> step = Optional.empty();
    private boolean finished;
    private long lastNanos;

    private Rehearsal(Plan plan, PlannedSet set, long seed) {
        name = plan.name() + ", seed " + seed;
        this.set = set;
        source = SimSource.rehearsing(set, plan.name(), seed, Tempo.unlimited());
        progress = new AlignmentProgress(plan);
        progress.withRest();
        progress.withHalvings();
        analysis = new Analysis(PeakSettings.defaults(), this::take);
    }

    static Rehearsal of(Plan plan, long seed) throws BridgeException, Refused {
        return at(PlannedSet.of(plan, seed), plan, seed);
    }

    static Rehearsal at(PlannedSet set, Plan plan, long seed) throws BridgeException {
        Rehearsal rehearsal = new Rehearsal(plan, set, seed);
        rehearsal.run();
        return rehearsal;
    }

    /** Goes on where the log of another ended, at a set of which only that is in order that the log has as done. */
    static Rehearsal resumed(Plan plan, long seed, List<SessionRecord> earlier) throws BridgeException, Refused {
        PlannedSet set = PlannedSet.of(plan, seed).inOrder(Adjuster.done(earlier)::contains);
        Rehearsal rehearsal = new Rehearsal(plan, set, seed);
        rehearsal.progress.resume(earlier);
        rehearsal.run();
        return rehearsal;
    }

    private void take(SessionRecord record) {
        lastNanos = record.tNanos();
        if (!(record instanceof ReadingTaken)) {
            log.add(record);
        }
        progress.take(record);
        source.hand().take(record);
        if (record instanceof Request.Turn turn) {
            step = Optional.of(turn.step());
        }
        if (record instanceof Adjuster it && it.action() != Adjuster.Action.BEGIN) {
            step.flatMap(set::scene).ifPresent(scene -> outcomes.add(outcome(scene, it)));
        }
    }

    private Outcome outcome(PlannedScene scene, Adjuster ended) {
        boolean zero = scene.role() == Role.DISCRIMINATOR;
        boolean beat = scene.role() == Role.BEAT_OSCILLATOR;
        boolean dial = scene.role() == Role.OSCILLATOR && !scene.step().rock();
        return new Outcome(
                scene,
                ended,
                zero || beat ? Double.NaN : set.truth().missingDb(scene),
                zero ? set.truth().zeroOffHz(scene) : Double.NaN,
                dial ? set.truth().dialOff(scene) : Double.NaN,
                beat ? set.truth().beatHz(scene) : Double.NaN);
    }

    private void run() throws BridgeException {
        Feed feed = new Feed();
        while (!finished && lastNanos < LONGEST_SECONDS * 1e9 && source.poll(0, feed) != Progress.ENDED) {
            // The feed does it all.
        }
    }

    /** The plan and the seed. */
    String name() {
        return name;
    }

    /** Every step as it ended last. */
    Collection<Outcome> last() {
        Map<PlannedScene, Outcome> last = new LinkedHashMap<>();
        outcomes.forEach(it -> last.put(it.scene(), it));
        return last.values();
    }

    /** Those that ended farther from the truth than they should. */
    List<Outcome> notMet() {
        return last().stream().filter(it -> !it.isMet()).toList();
    }

    /** How unequal the two peaks of each discriminator are now, of their mean. */
    List<Double> asymmetries() {
        return last().stream()
                .map(Outcome::scene)
                .filter(scene -> scene.role() == Role.DISCRIMINATOR)
                .map(set.truth()::peakAsymmetry)
                .toList();
    }

    /** Whether the plan came to its end. */
    boolean isFinished() {
        return finished;
    }

    /** Everything but the readings. */
    List<SessionRecord> log() {
        return List.copyOf(log);
    }

    /** What the bench said last. */
    String lastWord() {
        return log.stream()
                .filter(Said.Note.class::isInstance)
                .map(record -> ((Said.Note) record).text())
                .reduce("", (before, after) -> after);
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

    /** Lets the plan lead after each reading. */
    private final class Feed extends AnalysisListener {

        Feed() {
            super(analysis);
        }

        @Override
        public void reading(Reading reading) {
            super.reading(reading);
            for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
                order.get().match(Rehearsal.this);
            }
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
}
