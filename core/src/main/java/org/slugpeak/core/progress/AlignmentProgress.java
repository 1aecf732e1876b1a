package org.slugpeak.core.progress;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Queue;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Untimed;
import org.slugpeak.core.session.Work;

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
    private final Hearing hearing = new Hearing();
    private final Verdicts verdicts = new Verdicts();

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
        return record instanceof Work.WentBack || record instanceof Adjuster;
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
            say(Work.WentBack::new);
            endStep(Adjuster.Action.SKIP);
        } else if (phase == Phase.SETTLING && !skirtsWanted) {
            say(Work.WentBack::new);
            beginTurning();
            endStep(Adjuster.Action.SKIP);
        }
    }

    @Override
    public void take(SessionRecord record) {
        nowNanos = record.tNanos();
        record.matchFamily(hearing);
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
        Preparation preparation = connections.goTo(step);
        boolean handInSet = preparation.isAtTerminals();
        settling.begin(nowNanos, level, differs || handInSet, handInSet);
        if (!preparation.isNothing()) {
            say(at -> new Request.SetUp(at, preparation));
        }
    }

    private void beginTurning() {
        PlanStep step = route.step();
        phase = Phase.TURNING;
        twoPeaks = false;
        stuck.begin();
        sweeps = new SweepMeter();
        orders.add(new Order.Begin(step.adjuster(), step.goal().seek()));
        say(at -> new Request.Turn(at, step));
    }

    private void turning(ReadingTaken taken) {
        if (route.step().rock()) {
            rock(taken.reading().value());
            return;
        }
        switch (stuck.see(nowNanos, taken.smoothed(), taken.ofBest())) {
            case NOTHING -> {}
            case TELL -> stillShort(stuck.missingDb());
            case BEGIN_AGAIN -> {
                begunAgain = true;
                say(Guard.BegunAgain::new);
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
            say(Guard.Choice::new);
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
        say(at -> new Request.HandsOff(at, false));
    }

    private void compareHands() {
        if (nowNanos - phaseNanos < LEAVE_NANOS + COMPARE_NANOS) {
            return;
        }
        double changeDb = Decibels.of(lastSecond.mean() / withHand);
        if (Math.abs(changeDb) > HAND_DB && route.step().goal().hasDecibels()) {
            say(at -> new Work.HandEffect(at, changeDb));
        }
        endStep(Adjuster.Action.DONE);
    }

    private void rock(double value) {
        OptionalDouble sweep = sweeps.see(value);
        if (sweep.isPresent()) {
            double belowDb = sweeps.belowBestDb(sweep.getAsDouble());
            say(at -> new Work.Swept(at, belowDb));
            if (sweeps.isAtOptimum()) {
                handsOffRocking();
            }
        }
    }

    private void handsOffRocking() {
        say(at -> new Request.HandsOff(at, true));
        endStep(Adjuster.Action.DONE);
    }

    private void twoPeaks(TwoPeaks two) {
        if (phase == Phase.TURNING && !route.step().rock()) {
            twoPeaks = true;
            say(at -> new Guard.TwoMaxima(at, two.dipDb()));
        }
    }

    private void noPeak(NoPeakReason reason) {
        if (phase == Phase.TURNING && reason == NoPeakReason.END_OF_TRAVEL) {
            say(Guard.EndOfTravel::new);
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
            double gainDb = it.action() == Adjuster.Action.DONE ? step.goal().gainDb(it.gainDb()) : 0;
            int round = route.here().round();
            if (coupling.ended(route.stage(), step, round, it.action(), gainDb)) {
                say(at -> new Guard.LateGain(at, step.adjuster(), round, gainDb));
            }
            if (begunAgain) {
                route.unsettled();
            }
            route.advance(gainDb).ifPresent(end -> roundEnd(end, skirts));
        }
        begunAgain = false;
        goOn();
    }

    private void roundEnd(Route.RoundEnd end, boolean skirts) {
        say(at -> new Work.RoundEnded(at, end.stage(), end.round(), end.gainDb(), end.verdict()));
        skirtsWanted = skirts && !end.verdict().goesOn();
    }

    private void goOn() {
        entered = false;
        if (!skirtsWanted) {
            toNextStep();
        } else if (connections.isDamped()) {
            phase = Phase.SETTLING;
            entered = true;
            settling.begin(nowNanos, lastSecond.mean(), true, true);
            connections.undamp().ifPresent(damping -> say(at -> new Request.Undamp(at, damping)));
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
            say(Work.PlanOver::new);
            orders.add(new Order.Finish());
        } else {
            phase = Phase.SETTLING;
            phaseNanos = nowNanos;
        }
    }

    private void stillShort(double missingDb) {
        say(at -> new Guard.StillShort(at, Double.isFinite(missingDb) ? missingDb : Double.NaN));
    }

    private void say(Untimed what) {
        orders.add(new Order.Say(what));
    }

    /** What moves the work on; whether it is any of this is given only because the matcher wants a value. */
    private final class Hearing implements Families<Boolean> {

        @Override
        public Boolean other(SessionRecord it) {
            return false;
        }

        @Override
        public Boolean frame(Frame it) {
            if (it instanceof ReadingTaken taken) {
                reading(taken);
            }
            return true;
        }

        @Override
        public Boolean finding(Finding it) {
            return it.match(verdicts);
        }

        @Override
        public Boolean work(Work it) {
            if (it instanceof Adjuster adjuster) {
                adjuster(adjuster);
            }
            goingBack = goingBack || it instanceof Work.WentBack;
            return true;
        }

        @Override
        public Boolean request(Request it) {
            if (phase == Phase.CHECKING && it instanceof Request.CheckOver) {
                toNextStep();
            }
            return true;
        }
    }

    /** What each finding means for the adjuster at hand. */
    private final class Verdicts implements Finding.Matcher<Boolean> {

        @Override
        public Boolean passed(Passed it) {
            stuck.verdict();
            return true;
        }

        @Override
        public Boolean returned(Returned it) {
            stuck.verdict();
            return true;
        }

        @Override
        public Boolean held(Held it) {
            AlignmentProgress.this.held();
            return true;
        }

        @Override
        public Boolean twoPeaks(TwoPeaks it) {
            AlignmentProgress.this.twoPeaks(it);
            return true;
        }

        @Override
        public Boolean noPeak(NoPeak it) {
            AlignmentProgress.this.noPeak(it.reason());
            return true;
        }

        @Override
        public Boolean hinted(Finding.Hinted it) {
            return false;
        }

        @Override
        public Boolean furtherPast(Finding.FurtherPast it) {
            return false;
        }
    }
}
