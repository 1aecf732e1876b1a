package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.Optional;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Manner;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Lines for a screen reader: what changes, as one short sentence each, and while something is turned, at
 * most every {@value #EVERY_MILLIS} ms of reading time, how far the reading is from the best, where that has changed since it was said. A verdict that keeps changing, as hum or a bad
 * contact makes it, is said at most so often, and less and less. Nothing is drawn. One thread at a time.
 */
public final class PlainLines implements RecordSink {

    /** Between two lines that say nothing but the distance, ms of reading time. */
    static final long EVERY_MILLIS = 1500;

    private static final long EVERY_NANOS = EVERY_MILLIS * 1_000_000;

    private final PrintStream out;
    private final MomentKeeper keeper = new MomentKeeper();
    private final ToldWay way = new ToldWay();
    private final Calm calm = new Calm(EVERY_NANOS);
    private Act saidAct = Act.WAIT;
    private long saidAtNanos;

    /**
     * Lines that nobody has written yet.
     *
     * @param out where they go; each is flushed
     */
    public PlainLines(PrintStream out) {
        this.out = out;
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
        Optional<String> event = keeper.said();
        if (event.isPresent()) {
            event(record, event.get());
        } else if (record instanceof ReadingTaken taken) {
            reading(taken);
        }
    }

    /** A verdict, or a hint that goes with it, is said unless it has only just been said. */
    private void event(SessionRecord record, String sentence) {
        if (record instanceof Adjuster) {
            calm.forget();
        }
        Act act = keeper.moment().verdict().act();
        if (record.manner() == Manner.VERDICT) {
            verdict(record.tNanos(), act, sentence);
        } else if (isDue(record)) {
            saidAct = record instanceof Adjuster ? act : saidAct;
            say(record.tNanos(), sentence);
        }
    }

    private boolean isDue(SessionRecord record) {
        return !(record instanceof Finding.Hinted hinted)
                || !comesWithVerdicts(hinted.hint())
                || calm.lets(hinted.hint().code(), record.tNanos());
    }

    private static boolean comesWithVerdicts(Hint hint) {
        return switch (hint) {
            case BEST_AGED, STOPPED_SHORT, TURN_SLOWER -> true;
            case NEGATIVE_GOING, WRONG_WAY, SIGNAL_GONE, SIGNAL_BACK -> false;
        };
    }

    private boolean verdict(long tNanos, Act act, String sentence) {
        boolean may = calm.lets(act.name(), tNanos);
        if (may) {
            saidAct = act;
            say(tNanos, sentence);
        }
        return may;
    }

    /** What was not said when it was decided is said when it still holds after the pause. */
    private void reading(ReadingTaken taken) {
        Moment moment = keeper.moment();
        Act act = moment.verdict().act();
        boolean turning =
                moment.level().trend() != Trend.STEADY && moment.level().hasBest();
        boolean said = act != saidAct && verdict(taken.tNanos(), act, MomentWords.verdict(moment));
        if (!said && turning && taken.tNanos() - saidAtNanos >= EVERY_NANOS && way.isNews(moment)) {
            say(taken.tNanos(), MomentWords.distance(moment) + ", " + MomentWords.trend(moment));
            way.told(moment);
        }
    }

    private void say(long tNanos, String line) {
        saidAtNanos = tNanos;
        way.forget();
        out.println(SafeText.line(line));
        out.flush();
    }
}
