package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.Trend;
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
 * Lines for a screen reader: what changes, as one short sentence each, and while something is turned every
 * {@value #EVERY_MILLIS} ms of reading time how far the reading is from the best. A verdict that keeps changing, as hum or a bad
 * contact makes it, is said at most so often, and less and less. Nothing is drawn. One thread at a time.
 */
public final class PlainLines implements RecordSink {

    /** Between two lines that say nothing but the distance, ms of reading time. */
    static final long EVERY_MILLIS = 1500;

    private static final long EVERY_NANOS = EVERY_MILLIS * 1_000_000;

    /** Hints that come with verdicts. */
    private static final Set<String> HINTS =
            Set.of(Hint.BEST_AGED.code(), Hint.STOPPED_SHORT.code(), Hint.TURN_SLOWER.code());

    private final PrintStream out;
    private final SceneKeeper keeper = new SceneKeeper();
    private final EventWords words = new EventWords();
    private final Calm calm = new Calm(EVERY_NANOS);
    private Verdict.Call saidCall = Verdict.Call.WAIT;
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
        Optional<String> event = record.match(words);
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
        Verdict.Call call = keeper.scene().verdict().call();
        if (isVerdict(record)) {
            verdict(record.tNanos(), call, sentence);
        } else if (!(record instanceof Advice advice)
                || !HINTS.contains(advice.topic())
                || calm.lets(advice.topic(), record.tNanos())) {
            saidCall = record instanceof Adjuster ? call : saidCall;
            say(record.tNanos(), sentence);
        }
    }

    private static boolean isVerdict(SessionRecord record) {
        return record instanceof Passed
                || record instanceof Returned
                || record instanceof Held
                || record instanceof TwoPeaks
                || record instanceof NoPeak
                || (record instanceof Advice advice && advice.topic().equals(Hint.WRONG_WAY.code()));
    }

    private boolean verdict(long tNanos, Verdict.Call call, String sentence) {
        boolean may = calm.lets(call.word(), tNanos);
        if (may) {
            saidCall = call;
            say(tNanos, sentence);
        }
        return may;
    }

    /** What was not said when it was decided is said when it still holds after the pause. */
    private void reading(ReadingTaken taken) {
        Scene scene = keeper.scene();
        Verdict.Call call = scene.verdict().call();
        boolean turning = scene.level().trend() != Trend.STEADY && scene.level().hasBest();
        boolean said = call != saidCall && verdict(taken.tNanos(), call, SceneWords.verdict(scene));
        if (!said && turning && taken.tNanos() - saidAtNanos >= EVERY_NANOS) {
            say(taken.tNanos(), SceneWords.distance(scene) + ", " + SceneWords.trend(scene));
        }
    }

    private void say(long tNanos, String line) {
        saidAtNanos = tNanos;
        out.println(SafeText.line(line));
        out.flush();
    }
}
