package org.slugpeak.cli.display;

import java.io.PrintStream;
import java.util.Optional;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Lines for a screen reader: what changes, as one short sentence each, and while something is turned every
 * {@value #EVERY_MILLIS} ms of reading time how far the reading is from the best. Nothing is drawn. One thread at a time.
 */
public final class PlainLines implements RecordSink {

    /** Between two lines that say nothing but the distance, ms of reading time. */
    static final long EVERY_MILLIS = 1500;

    private static final long EVERY_NANOS = EVERY_MILLIS * 1_000_000;

    private final PrintStream out;
    private final SceneKeeper keeper = new SceneKeeper();
    private final EventWords words = new EventWords();
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
        Verdict.Call before = keeper.scene().verdict().call();
        keeper.take(record);
        Optional<String> event = record.match(words);
        if (event.isPresent()) {
            say(record.tNanos(), event.get());
        } else if (record instanceof ReadingTaken taken) {
            reading(taken, before);
        }
    }

    private void reading(ReadingTaken taken, Verdict.Call before) {
        Scene scene = keeper.scene();
        boolean turning = scene.level().trend() != Trend.STEADY && scene.level().hasBest();
        if (scene.verdict().call() != before) {
            say(taken.tNanos(), scene.verdict().sentence());
        } else if (turning && taken.tNanos() - saidAtNanos >= EVERY_NANOS) {
            say(taken.tNanos(), SceneWords.distance(scene) + ", " + SceneWords.trend(scene));
        }
    }

    private void say(long tNanos, String line) {
        saidAtNanos = tNanos;
        out.println(line);
        out.flush();
    }
}
