package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.Work;

/**
 * One plain line a reading, and one for each event, for standard output that is a pipe or a file. Programs are better served
 * by {@code --json}. One thread at a time.
 */
public final class PipeLines implements RecordSink {

    private final PrintStream out;
    private final MomentKeeper keeper = new MomentKeeper();
    private final Counting counting = new Counting();

    /** How the session opened; a session that fails before anything came is told by the one line on standard error. */
    private final List<String> opening = new ArrayList<>();

    private boolean opened;
    private boolean stepped;
    private long steps;
    private long lastStepNanos = -1;

    /**
     * Lines that nobody has written yet.
     *
     * @param out where they go; each is flushed
     */
    public PipeLines(PrintStream out) {
        this.out = out;
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
        record.tellFamily(counting);
        boolean opens = record instanceof SessionStart || record instanceof Adjuster;
        boolean failsUnopened = !opened && record instanceof SessionEnd end && end.reason() == EndReason.Known.FAILED;
        if (!opens && !failsUnopened) {
            opened = true;
            opening.forEach(out::println);
            opening.clear();
        }
        Optional<String> event = keeper.said();
        if (event.isPresent() && !failsUnopened) {
            say(record.tNanos(), "* " + event.get());
        } else if (record instanceof ReadingTaken taken) {
            say(record.tNanos(), line(taken));
        }
    }

    private String line(ReadingTaken taken) {
        Moment moment = keeper.moment();
        Condition condition = taken.reading().condition();
        String value = condition.hasValue()
                ? Figures.of(taken.reading().value(), moment.level().best(), moment.unit())
                        .toString()
                : CodeWords.of(condition.code());
        return value + "  " + MomentWords.distance(moment) + (stepped ? best(moment) : "") + "  "
                + CodeWords.of(moment.level().trend().code());
    }

    /** Whoever types values has no screen to see the best on. */
    private static String best(Moment moment) {
        return MomentWords.best(moment);
    }

    /** What a step brings is said before its reading. */
    private void say(long tNanos, String words) {
        String when = stepped
                ? ScreenPhrase.STEP.of(tNanos > lastStepNanos ? steps + 1 : steps)
                : String.format(Locale.ROOT, "%8.2f s", tNanos / 1e9);
        String line = when + "  " + SafeText.line(words);
        if (opened) {
            out.println(line);
            out.flush();
        } else {
            opening.add(line);
        }
    }

    /** Counts the steps of an adjuster. */
    private final class Counting implements FamilyListener, Frame.Matcher<Runnable> {

        @Override
        public void frame(Frame it) {
            it.match(this).run();
        }

        @Override
        public Runnable sessionStart(SessionStart it) {
            return () -> stepped = it.stepped();
        }

        @Override
        public Runnable readingTaken(ReadingTaken it) {
            return () -> {
                steps++;
                lastStepNanos = it.tNanos();
            };
        }

        @Override
        public Runnable sessionEnd(SessionEnd it) {
            return () -> {};
        }

        @Override
        public void work(Work it) {
            boolean begins = it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN;
            steps = begins ? 0 : steps;
        }

        @Override
        public void said(Said it) {
            boolean back = it instanceof Said.Command given && given.instruction() instanceof Instruction.TakeBack;
            steps = back ? Math.max(0, steps - 1) : steps;
        }
    }
}
