package org.slugpeak.core.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/** A session played by hand: carries out the orders as the real one does, and keeps its log. */
final class Session implements Order.Matcher {

    static final double READINGS_PER_SECOND = 20;

    final AlignmentProgress progress;
    final List<SessionRecord> log = new ArrayList<>();

    /** Where the work was after each record of the log. */
    final List<Position> positions = new ArrayList<>();

    /** How the generator was ordered to stand, in order. */
    final List<Setup> fed = new ArrayList<>();

    /** What the level watch was ordered to do, in order. */
    final List<LevelCommand> commands = new ArrayList<>();

    private double gainDb = Double.NaN;
    private double seconds;
    private double level = 1;
    private double best = 1;
    private String adjuster = "";
    private boolean finished;

    Session(AlignmentProgress progress) {
        this.progress = progress;
    }

    Session(Plan plan) {
        this(new AlignmentProgress(plan));
    }

    /** The first adjuster is begun. */
    static Session started(Plan plan) {
        return new Session(plan).stand(1, 2);
    }

    /** The order of a check. */
    static Instruction check(CheckKind kind) {
        return new Instruction.Level(LevelCommand.check(kind));
    }

    /** The reading stands at a level for some time. */
    Session stand(double newLevel, double forSeconds) {
        level = newLevel;
        for (int i = 0; i < forSeconds * READINGS_PER_SECOND; i++) {
            read(newLevel);
        }
        return this;
    }

    void read(double value) {
        seconds += 1 / READINGS_PER_SECOND;
        give(new ReadingTaken(Reading.of(now(), value), value, best, Double.NaN, value / best, Trend.STEADY));
    }

    /** From here on the best stands there, whatever is read. */
    Session best(double newBest) {
        best = newBest;
        return this;
    }

    Session passed() {
        give(new Passed(now(), best, now(), 0.1));
        return this;
    }

    Session returned() {
        give(new Returned(now(), level, 0.1));
        return this;
    }

    /** The user peaks the adjuster and takes the hand away: this is what it brings. */
    Session peak(double bringsDb) {
        gainDb = bringsDb;
        give(new Held(now(), level, 0));
        return stand(level, 3);
    }

    Session held() {
        give(new Held(now(), level, 0));
        return this;
    }

    Session twoPeaks() {
        give(new TwoPeaks(now(), 1, 0.9, 3));
        return this;
    }

    Session noPeak(NoPeakReason reason) {
        give(new NoPeak(now(), reason));
        return this;
    }

    /** The check that is under way finds that the reading does not follow, and is over. */
    Session flattened() {
        return followingBy(0.7);
    }

    /** The same where next to nothing changes. */
    Session limited() {
        return followingBy(0.05);
    }

    private Session followingBy(double slope) {
        give(new Overload(now(), Overload.Cause.FLATTENING, slope));
        return checkOver();
    }

    /** The check that is under way finds a resting reading, and is over. */
    Session rested(double value) {
        give(new Caution.Checked(now(), CheckKind.REST, CheckFigures.of(value)));
        return checkOver();
    }

    /** Nothing changed when it should. */
    Session checkDropped() {
        give(new Request.CheckDropped(now(), 25));
        return checkOver();
    }

    Session checkOver() {
        give(new Request.CheckOver(now()));
        return this;
    }

    Session key(Runnable key) {
        key.run();
        obey();
        return this;
    }

    private long now() {
        return Math.round(seconds * 1e9);
    }

    private void give(SessionRecord record) {
        log.add(record);
        progress.take(record);
        positions.add(progress.position());
        obey();
    }

    private void obey() {
        for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
            order.get().match(this);
        }
    }

    @Override
    public void begin(Order.Begin it) {
        adjuster = it.adjuster();
        give(new Adjuster(now(), adjuster, Adjuster.Action.BEGIN, level, Double.NaN, Double.NaN));
    }

    @Override
    public void end(Order.End it) {
        give(new Adjuster(now(), adjuster, it.action(), level, level, gainDb));
    }

    @Override
    public void say(Order.Say it) {
        give(it.what().at(now()));
    }

    @Override
    public void level(Order.Level it) {
        commands.add(it.command());
        give(new Said.Command(now(), new Instruction.Level(it.command())));
    }

    @Override
    public void feed(Order.Feed it) {
        fed.add(it.setup());
    }

    @Override
    public void finish(Order.Finish it) {
        finished = true;
    }

    boolean isFinished() {
        return finished;
    }

    /** What was said of one kind, in order. */
    <T> List<T> said(Class<T> kind) {
        return log.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** What was asked to be set up, in order. */
    List<Preparation> prepared() {
        return said(Request.SetUp.class).stream().map(Request.SetUp::what).toList();
    }

    /** What a person was told to judge, in order. */
    List<Guard> guards() {
        return said(Guard.class);
    }

    /** What was ordered, in order. */
    List<Instruction> orders() {
        return said(Said.Command.class).stream().map(Said.Command::instruction).toList();
    }

    /** Which adjusters were begun, or ended, in order. */
    List<String> adjusters(Predicate<Adjuster.Action> which) {
        return log.stream()
                .filter(Adjuster.class::isInstance)
                .map(Adjuster.class::cast)
                .filter(each -> which.test(each.action()))
                .map(Adjuster::name)
                .toList();
    }

    List<String> begun() {
        return adjusters(action -> action == Adjuster.Action.BEGIN);
    }
}
