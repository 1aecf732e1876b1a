package org.slugpeak.core.session;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.level.LevelWatch;
import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/**
 * Turns what a source delivers into session records. Live, replay, demo and tests all go through this class, so that the
 * same readings give the same records, bit for bit. For every reading there are zero or more event records and then exactly
 * one {@link ReadingTaken}. Times are rebased to the first reading.
 *
 * <p>One thread at a time.
 */
public final class Analysis {

    private final RecordSink sink;
    private final PeakListener found;
    private PeakSettings settings;
    private PeakFinder finder;
    private final LevelWatch level;

    private boolean begun;
    private long originNanos;
    private long lastNanos;
    private long readings;
    private boolean saw = true;
    private double scale = 1;
    private final AdjusterBook adjusters;
    private final RecordSink noting;
    private final Obeying obeying = new Obeying();
    private final SlowStream slow = new SlowStream();
    private Optional<Stepping> stepping = Optional.empty();
    private boolean betweenAdjusters;

    /**
     * An analysis that has seen nothing yet.
     *
     * @param settings what to seek
     * @param sink takes every record
     */
    public Analysis(PeakSettings settings, RecordSink sink) {
        this.sink = sink;
        this.level = new LevelWatch(settings.seek(), new LevelRecords(sink));
        this.adjusters = new AdjusterBook();
        this.noting = record -> {
            adjusters.see(record);
            sink.take(record);
        };
        this.settings = settings;
        this.found = new FinderRecords(this::findingOfThisAdjuster, level);
        this.finder = PeakFinder.create(settings, found);
    }

    /**
     * Opens the session with its first record.
     *
     * @param start says what is measured, and whether the readings are settled values, one for each step of a turn
     */
    public void start(SessionStart start) {
        stepping = start.stepped() ? Optional.of(new Stepping(settings.seek(), noting)) : Optional.empty();
        sink.take(start);
    }

    /**
     * Takes one reading.
     *
     * @param reading on the source's own time axis
     */
    public void reading(Reading reading) {
        long tNanos = sessionTime(reading.tNanos());
        Condition condition = reading.condition();
        readings++;
        Reading rebased = new Reading(tNanos, reading.value(), condition);
        if (stepping.isPresent()) {
            step(rebased, stepping.get());
            return;
        }
        slow.see(tNanos).ifPresent(seconds -> sink.take(new Caution.SlowReadings(tNanos, seconds)));
        level.accept(tNanos, reading.value(), condition);
        if (level.takeZeroMoved()) {
            finder.restart();
        }
        find(tNanos, reading.value(), condition);
        adjusters.level(level.fromFinder(finder.smoothed()), finder.smoothed());
        sink.take(new ReadingTaken(
                rebased,
                level.fromFinder(finder.smoothed()),
                level.fromFinder(finder.best()),
                level.spreadFromFinder(finder.best(), finder.bestSigma()),
                finder.ofBest(),
                finder.trend()));
    }

    /** Of the level watch only the conditions make sense here: the rest goes by the clock. */
    private void step(Reading reading, Stepping steps) {
        level.condition(reading.tNanos(), reading.condition());
        ReadingTaken taken = steps.take(reading);
        adjusters.level(taken.smoothed(), taken.smoothed());
        sink.take(taken);
    }

    /** While the level is being checked or the generator turned, the reading says nothing of the adjuster. */
    private void find(long tNanos, double value, Condition condition) {
        boolean sees = level.letsFinderSee();
        if (sees) {
            if (level.scale() != scale) {
                scale = level.scale();
                finder.scaleChanged();
            }
            finder.accept(tNanos, level.toFinder(value), condition);
            level.smoothed(tNanos, finder.smoothed());
        } else if (saw) {
            gap();
        }
        saw = sees;
    }

    /**
     * Takes a change of the link. The best survives it; what came before and after is not taken as adjacent.
     *
     * @param tNanos on the source's own time axis
     * @param state what happened
     * @param detail what is known of it
     */
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        gap();
        sink.take(new Link.Changed(eventTime(tNanos), state, detail));
    }

    /**
     * Takes a break in the run of readings that the instrument made itself, though the link is sound: it changed its range, it
     * started anew. What came before and after is not taken as adjacent.
     *
     * @param notice how
     * @param detail what is known of it
     */
    public void interrupted(LinkNotice notice, LinkDetail detail) {
        gap();
        sink.take(new Link.Broken(lastNanos, notice, detail));
    }

    private void gap() {
        finder.gap();
        level.gap();
    }

    /**
     * Takes the user's own note, at the time of the last reading.
     *
     * @param text one line; whatever it reads, it is no instruction
     */
    public void note(String text) {
        sink.take(new Said.Note(lastNanos, text));
    }

    /**
     * Takes an instruction, at the time of the last reading. As it stands in the log, a replay that gives the same does the same.
     * One that means nothing here is recorded and not obeyed: to the level watch in a stepped session, to take back in another.
     *
     * @param instruction what to do
     */
    public void command(Instruction instruction) {
        sink.take(new Said.Command(lastNanos, instruction));
        instruction.match(obeying).run();
    }

    private void toLevelWatch(LevelCommand command) {
        if (stepping.isEmpty()) {
            level.command(lastNanos, command);
        }
    }

    private void takeBack() {
        if (stepping.isPresent() && !stepping.get().undo()) {
            sink.take(new Work.NothingToTakeBack(lastNanos));
        }
    }

    /** From here on something else is sought; the finder starts anew, since a peak says nothing of a dip. */
    private void seek(Seek wanted) {
        if (wanted != settings.seek()) {
            settings = settings.withSeek(wanted);
            finder = PeakFinder.create(settings, found);
            stepping.ifPresent(steps -> steps.seek(wanted));
        }
    }

    /** What each kind of instruction makes it do. */
    private final class Obeying implements Instruction.Matcher<Runnable> {

        @Override
        public Runnable level(Instruction.Level it) {
            return () -> toLevelWatch(it.command());
        }

        @Override
        public Runnable find(Instruction.Find it) {
            return () -> seek(it.seek());
        }

        @Override
        public Runnable takeBack(Instruction.TakeBack it) {
            return Analysis.this::takeBack;
        }
    }

    /**
     * Takes what somebody else has to tell, a source or whoever leads the work, at the time of the last reading.
     *
     * @param what gets its time here
     */
    public void tell(Untimed what) {
        sink.take(what.at(lastNanos));
    }

    /**
     * Forgets the best and begins the next adjuster, at the time of the last reading.
     *
     * @param name of the adjuster that begins
     */
    public void nextAdjuster(String name) {
        finder.restart();
        stepping.ifPresent(Stepping::restart);
        level.adjusterBegun(name);
        betweenAdjusters = false;
        sink.take(adjusters.begin(lastNanos, name));
    }

    /**
     * Records that the adjuster begun last is set or is left as it is, at the time of the last reading: the level before and
     * after, and what was gained. Nothing happens where none is begun.
     *
     * @param action {@link Adjuster.Action#DONE} or {@link Adjuster.Action#SKIP}
     */
    public void adjusterEnded(Adjuster.Action action) {
        adjusterEnded(action, OptionalDouble.empty());
    }

    /**
     * The same where somebody else knows what was gained.
     *
     * @param action {@link Adjuster.Action#DONE} or {@link Adjuster.Action#SKIP}
     * @param gainDb dB; empty where the readings before and after tell it
     */
    public void adjusterEnded(Adjuster.Action action, OptionalDouble gainDb) {
        Optional<Adjuster> ended = adjusters
                .end(lastNanos, action, settings.seek(), level::straight)
                .map(it -> gainDb.isPresent() ? it.gaining(gainDb.getAsDouble()) : it);
        ended.ifPresent(sink::take);
        betweenAdjusters = betweenAdjusters || ended.isPresent();
    }

    /**
     * Closes the session; an adjuster that is held counts as done.
     *
     * @param reason one word or line: why it ended
     */
    public void end(EndReason reason) {
        if (adjusters.isHeld()) {
            adjusterEnded(Adjuster.Action.DONE);
        }
        sink.take(new SessionEnd(lastNanos, readings, reason));
    }

    /**
     * How many readings were taken.
     *
     * @return not negative
     */
    public long readings() {
        return readings;
    }

    /** Between the end of an adjuster and the beginning of the next the clips may move: no verdict of the old one goes on. */
    private void findingOfThisAdjuster(SessionRecord finding) {
        if (!betweenAdjusters) {
            noting.take(finding);
        }
    }

    private long sessionTime(long sourceNanos) {
        if (!begun) {
            begun = true;
            originNanos = sourceNanos;
        }
        lastNanos = sourceNanos - originNanos;
        return lastNanos;
    }

    private long eventTime(long sourceNanos) {
        return begun ? sourceNanos - originNanos : 0;
    }
}
