package org.slugpeak.cli.run;

import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionStart;

/**
 * One session: polls the source, analyses, hands every record to the outputs, until the source ends or somebody quits. One
 * thread runs it; any thread may {@link #request} something of it.
 */
public final class SessionRun implements SessionControl {

    private static final long WAIT_NANOS = 40_000_000;

    private final ReadingSource source;
    private final List<SessionOutput> outputs;
    private final Analysis analysis;
    private final AnalysisFeed feed;
    private final Queue<Consumer<SessionControl>> requests = new ConcurrentLinkedQueue<>();
    private int adjusters = 1;
    private String endReason = "";

    /**
     * A session that has not begun.
     *
     * @param source where readings come from
     * @param settings what to seek
     * @param start makes the first record, when the source knows what it measures
     * @param outputs take every record, in this order
     */
    public SessionRun(
            ReadingSource source, PeakSettings settings, Supplier<SessionStart> start, List<SessionOutput> outputs) {
        this.source = source;
        this.outputs = List.copyOf(outputs);
        this.analysis = new Analysis(settings, record -> this.outputs.forEach(output -> output.take(record)));
        this.feed = new AnalysisFeed(analysis, start);
    }

    /**
     * Asks for something to be done between two passes of the source.
     *
     * @param request gets the session's controls, in the session's thread
     */
    public void request(Consumer<SessionControl> request) {
        requests.add(request);
    }

    /**
     * Runs to the end, then writes the {@code end} record and closes source and outputs.
     *
     * @return why it ended, as in the {@code end} record
     * @throws BridgeException where the source fails for good; the session is closed properly all the same
     */
    public String run() throws BridgeException {
        try {
            while (endReason.isEmpty()) {
                pass();
            }
            return endReason;
        } catch (BridgeException failure) {
            endReason = "failed";
            throw failure;
        } finally {
            finish();
        }
    }

    private void pass() throws BridgeException {
        Progress progress = source.poll(WAIT_NANOS, feed);
        for (Consumer<SessionControl> request = requests.poll(); request != null; request = requests.poll()) {
            feed.begin();
            request.accept(this);
        }
        if (progress == Progress.ENDED && endReason.isEmpty()) {
            endReason = "source ended";
        }
        if (progress != Progress.MORE) {
            outputs.forEach(SessionOutput::flush);
        }
    }

    private void finish() {
        feed.begin();
        feed.summarise();
        analysis.end(endReason);
        outputs.forEach(SessionOutput::flush);
        outputs.forEach(SessionOutput::close);
        source.close();
    }

    @Override
    public void mark(String text) {
        analysis.mark(text);
    }

    @Override
    public void nextAdjuster() {
        adjusters++;
        analysis.nextAdjuster("adjuster " + adjusters);
    }

    @Override
    public void quit(String reason) {
        endReason = reason;
    }
}
