package org.slugpeak.core.plan;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.safety.SafeHands;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/**
 * Leads through a plan. It hears every record of the session and gives orders to whoever runs it; the orders come back as
 * records, so that the log alone tells where the work is, and a cut session goes on from its log ({@link #resume}).
 *
 * <pre>
 *   SETTLING --reading stands--&gt; TURNING --held--&gt; HANDS_OFF --one second--&gt; (adjuster done) --&gt; next step
 *      ^                            |  rocked: sweeps back at the best                             |
 *      |                            +--two maxima--&gt; CHOOSING --stays, or key--&gt; HANDS_OFF         |
 *      +------------------------------------------------------------------------------------------+
 *   TURNING, told to turn back or stop, and nothing moves: the user is told, then the adjuster is begun again
 *   end of a round: again until it changes less than the rule says; then CHECKING (skirts) where the plan wants it; then OVER
 *   CHECKING (resting reading) comes before everything where {@link #restFirst} was called
 * </pre>
 *
 * <p>One thread at a time.
 */
public final class AlignmentProgress implements RecordSink {

    /** While a hand leaves, the reading moves less than this, dB. */
    private static final double STAND_DB = 0.5;

    /** The reading of one second before the hand leaves is compared with one second after. */
    private static final long COMPARE_NANOS = 1_000_000_000L;

    /** Time to take the hand away. */
    private static final long LEAVE_NANOS = 1_500_000_000L;

    /** A hand that changes the reading by more than this is reported, dB. */
    private static final double HAND_DB = 0.2;

    /** Staying so long on one of two maxima chooses it. */
    private static final long CHOOSE_NANOS = 10_000_000_000L;

    private enum Phase {
        SETTLING,
        TURNING,
        CHOOSING,
        HANDS_OFF,
        ENDING,
        CHECKING,
        OVER
    }

    private final Route route;
    private final Queue<Order> orders = new ArrayDeque<>();
    private final SettlingWatch settling = new SettlingWatch();
    private final SteadyWatch lastSecond = new SteadyWatch(COMPARE_NANOS, STAND_DB);

    private Phase phase = Phase.SETTLING;
    private final Connections connections = new Connections();
    private boolean entered;
    private boolean resuming;
    private boolean goingBack;
    private boolean twoPeaks;
    private boolean skirtsWanted;
    private boolean begunAgain;
    private double withHand = Double.NaN;
    private long phaseNanos;
    private long nowNanos;
    private SweepMeter sweeps = new SweepMeter();
    private final StuckWatch stuck = new StuckWatch();
    private final CouplingWatch coupling = new CouplingWatch();

    /**
     * Progress at the beginning of a plan.
     *
     * @param plan what is to be done
     */
    public AlignmentProgress(Plan plan) {
        this.route = new Route(plan);
    }

    /**
     * Goes on where a log stopped: every adjuster that it has as done or skipped counts, everything else is done again.
     *
     * @param log records of the cut session, in order
     */
    public void resume(List<SessionRecord> log) {
        resuming = true;
        log.stream().filter(AlignmentProgress::movesOn).forEach(this::take);
        resuming = false;
        orders.clear();
        phase = route.isOver() ? Phase.OVER : Phase.SETTLING;
        entered = false;
        connections.forget();
    }

    private static boolean movesOn(SessionRecord record) {
        boolean back = record instanceof Advice advice && advice.topic().equals(Topics.BACK);
        return back || record instanceof Adjuster;
    }

    /** The resting reading, generator off, is taken before anything else; to be called before the first record. */
    public void restFirst() {
        if (phase == Phase.SETTLING) {
            phase = Phase.CHECKING;
            orders.add(new Order.Level(LevelCommand.check(CheckKind.REST)));
        }
    }

    /**
     * Where the work is.
     *
     * @return the present place; the last one when the plan is through
     */
    public Position position() {
        return route.here();
    }

    /**
     * Whether the plan is through.
     *
     * @return true after the last step
     */
    public boolean isOver() {
        return phase == Phase.OVER;
    }

    /**
     * Takes the next order away; to be asked after each record until there is none.
     *
     * @return what to do
     */
    public Optional<Order> nextOrder() {
        return Optional.ofNullable(orders.poll());
    }

    /** The user's key: it is set, it is done, it is this one. */
    public void next() {
        switch (phase) {
            case SETTLING -> ready();
            case TURNING, CHOOSING, HANDS_OFF -> endStep(Adjuster.Action.DONE);
            case CHECKING -> orders.add(new Order.Level(LevelCommand.done()));
            default -> {}
        }
    }

    /** The user's key: leave this adjuster as it is, or drop the check that is under way. */
    public void skip() {
        if (phase == Phase.CHECKING) {
            orders.add(new Order.Level(LevelCommand.cancel()));
            toNextStep();
            return;
        }
        if (phase == Phase.SETTLING) {
            ready();
        }
        if (phase == Phase.TURNING || phase == Phase.CHOOSING || phase == Phase.HANDS_OFF) {
            endStep(Adjuster.Action.SKIP);
        }
    }

    /** The user's key: one step back. */
    public void back() {
        if (phase == Phase.TURNING || phase == Phase.CHOOSING || phase == Phase.HANDS_OFF) {
            say(Topics.BACK, "back one step", Double.NaN);
            endStep(Adjuster.Action.SKIP);
        } else if (phase == Phase.SETTLING && !skirtsWanted) {
            say(Topics.BACK, "back one step", Double.NaN);
            beginTurning();
            endStep(Adjuster.Action.SKIP);
        }
    }

    @Override
    public void take(SessionRecord record) {
        nowNanos = record.tNanos();
        if (record instanceof ReadingTaken taken) {
            reading(taken);
        } else if (record instanceof Held) {
            held();
        } else if (record instanceof Passed || record instanceof Returned) {
            stuck.verdict();
        } else if (record instanceof TwoPeaks two) {
            twoPeaks(two);
        } else if (record instanceof NoPeak none) {
            noPeak(none.reason());
        } else if (record instanceof Adjuster adjuster) {
            adjuster(adjuster);
        } else if (record instanceof Advice advice) {
            advice(advice);
        }
    }

    private void reading(ReadingTaken taken) {
        if (!taken.reading().condition().isTrusted() || Double.isNaN(taken.smoothed())) {
            return;
        }
        lastSecond.see(nowNanos, taken.smoothed());
        switch (phase) {
            case SETTLING -> settle(taken.smoothed());
            case TURNING -> turning(taken);
            case CHOOSING -> choose();
            case HANDS_OFF -> compareHands();
            default -> {}
        }
    }

    private void settle(double level) {
        if (!entered) {
            enterStep(level);
        }
        if (settling.isDone(nowNanos, level, route.step().goal().seek().signCounts())) {
            ready();
        }
    }

    /** What was asked for is set: now the adjuster, or the skirts where only a damping resistor was still in the way. */
    private void ready() {
        if (skirtsWanted) {
            checkSkirts();
        } else {
            beginTurning();
        }
    }

    private void enterStep(double level) {
        entered = true;
        PlanStep step = route.step();
        boolean differs = connections.changesFor(step);
        Optional<Connections.Change> change = connections.goTo(step);
        boolean handInSet = change.map(Connections.Change::atTerminals).orElse(false);
        settling.begin(nowNanos, level, differs || handInSet, handInSet);
        change.map(Connections.Change::say).ifPresent(orders::add);
    }

    private void beginTurning() {
        PlanStep step = route.step();
        phase = Phase.TURNING;
        twoPeaks = false;
        stuck.begin();
        sweeps = new SweepMeter();
        orders.add(new Order.Begin(step.adjuster(), step.goal().seek()));
        say(Topics.TURN, Directions.turn(step), Double.NaN);
    }

    private void turning(ReadingTaken taken) {
        if (route.step().rock()) {
            rock(taken.reading().value());
            return;
        }
        switch (stuck.see(nowNanos, taken.smoothed(), taken.ofBest())) {
            case NOTHING -> {}
            case TELL -> say(Topics.GUARD, stuck.words(), Double.NaN);
            case BEGIN_AGAIN -> {
                begunAgain = true;
                say(Topics.GUARD, "nothing has moved for 20 s: that best is forgotten, begin again", Double.NaN);
                beginTurning();
            }
        }
    }

    private void held() {
        if (phase != Phase.TURNING || route.step().rock()) {
            return;
        }
        phaseNanos = nowNanos;
        if (twoPeaks) {
            phase = Phase.CHOOSING;
            say(
                    Topics.GUARD,
                    "two maxima: the proper one is usually with the slugs at the outer ends; stay ten seconds to keep"
                            + " this one, or turn to the other",
                    Double.NaN);
        } else {
            handsOff();
        }
    }

    private void choose() {
        if (!lastSecond.isSteady()) {
            phase = Phase.TURNING;
        } else if (nowNanos - phaseNanos >= CHOOSE_NANOS) {
            handsOff();
        }
    }

    private void handsOff() {
        phase = Phase.HANDS_OFF;
        phaseNanos = nowNanos;
        withHand = lastSecond.mean();
        say(Topics.HANDS_OFF, "hands off", Double.NaN);
    }

    private void compareHands() {
        if (nowNanos - phaseNanos < LEAVE_NANOS + COMPARE_NANOS) {
            return;
        }
        double changeDb = Decibels.of(lastSecond.mean() / withHand);
        if (Math.abs(changeDb) > HAND_DB && !route.step().goal().seek().signCounts()) {
            say(
                    Topics.HAND_EFFECT,
                    String.format(
                            Locale.ROOT, "%+.1f dB when the hand left: the tool or hand detunes the circuit", changeDb),
                    changeDb);
        }
        endStep(Adjuster.Action.DONE);
    }

    private void rock(double value) {
        OptionalDouble sweep = sweeps.see(value);
        if (sweep.isPresent()) {
            double belowDb = sweeps.belowBestDb(sweep.getAsDouble());
            say(Topics.SWEEP, String.format(Locale.ROOT, "%.1f dB of the best sweep", Rounded.to(belowDb, 1)), belowDb);
            if (sweeps.isAtOptimum()) {
                handsOffRocking();
            }
        }
    }

    private void handsOffRocking() {
        say(Topics.HANDS_OFF, "that is the greatest sweep: leave it there", Double.NaN);
        endStep(Adjuster.Action.DONE);
    }

    private void twoPeaks(TwoPeaks two) {
        if (phase == Phase.TURNING && !route.step().rock()) {
            twoPeaks = true;
            say(Topics.GUARD, "two maxima in one travel: which one is right?", two.dipDb());
        }
    }

    private void noPeak(NoPeakReason reason) {
        if (phase == Phase.TURNING && reason == NoPeakReason.END_OF_TRAVEL) {
            say(
                    Topics.GUARD,
                    "best at the end of travel: wrong slug, wrong IF, or a part has changed; skip it, and with "
                            + SafeHands.SAFE + " look for the fault before going on",
                    Double.NaN);
        }
    }

    private void endStep(Adjuster.Action action) {
        phase = Phase.ENDING;
        orders.add(new Order.End(action));
    }

    /** The record of the end: from here on the log knows of it. */
    private void adjuster(Adjuster it) {
        boolean expected = resuming || phase == Phase.ENDING;
        if (it.action() == Adjuster.Action.BEGIN || !expected || route.isOver()) {
            return;
        }
        PlanStep step = route.step();
        if (goingBack) {
            goingBack = false;
            route.back();
        } else {
            boolean skirts = route.stage().steps().stream().anyMatch(each -> each.acceptance() == Acceptance.SKIRTS);
            double gainDb = it.action() == Adjuster.Action.DONE ? gainDb(step.goal(), it.gainDb()) : 0;
            coupling.ended(route.stage(), step, route.here().round(), it.action(), gainDb)
                    .ifPresent(words -> say(Topics.GUARD, words, gainDb));
            if (begunAgain) {
                route.unsettled();
            }
            route.advance(gainDb).ifPresent(end -> roundEnd(end, skirts));
        }
        begunAgain = false;
        goOn();
    }

    private static double gainDb(Goal goal, double recordedDb) {
        return goal == Goal.DIP ? -recordedDb : recordedDb;
    }

    private void roundEnd(Route.RoundEnd end, boolean skirts) {
        say(
                Topics.ROUND,
                String.format(
                        Locale.ROOT,
                        "%s, round %d gained %.2f dB: %s",
                        end.stage(),
                        end.round(),
                        Rounded.to(end.gainDb(), 2),
                        end.verdict().words()),
                end.gainDb());
        skirtsWanted = skirts && end.verdict() != Route.Verdict.AGAIN && end.verdict() != Route.Verdict.CREEPING;
    }

    private void goOn() {
        entered = false;
        if (!skirtsWanted) {
            toNextStep();
        } else if (connections.isDamped()) {
            phase = Phase.SETTLING;
            entered = true;
            settling.begin(nowNanos, lastSecond.mean(), true, true);
            connections.undamp().ifPresent(orders::add);
        } else {
            checkSkirts();
        }
    }

    private void checkSkirts() {
        skirtsWanted = false;
        phase = Phase.CHECKING;
        orders.add(new Order.Level(LevelCommand.check(CheckKind.SKIRTS)));
    }

    private void toNextStep() {
        if (route.isOver()) {
            phase = Phase.OVER;
            String job = "take off leads, clamps and damping resistors, seal the slugs; AFC back on";
            say(Topics.PLAN_OVER, "the plan is through: " + SafeHands.leaveOff(job), Double.NaN);
            orders.add(new Order.Finish());
        } else {
            phase = Phase.SETTLING;
            phaseNanos = nowNanos;
        }
    }

    private void advice(Advice it) {
        if (it.topic().equals(Topics.BACK)) {
            goingBack = true;
        } else if (phase == Phase.CHECKING && it.topic().equals("check-over")) {
            toNextStep();
        }
    }

    private void say(String topic, String text, double amount) {
        orders.add(new Order.Say(topic, text, amount));
    }
}
