package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** Runs a simulated bench through the analysis as a command would, and keeps what came of it. */
final class SimRun implements SourceListener {

    private final List<SessionRecord> records = new ArrayList<>();
    private final Analysis analysis;

    private SimRun(RecordSink hand) {
        this.analysis = new Analysis(PeakSettings.defaults(), record -> {
            records.add(record);
            hand.take(record);
        });
    }

    static List<SessionRecord> of(SimSource source, double seconds) throws BridgeException {
        SimRun run = new SimRun(source.hand());
        long end = (long) (seconds * 1e9);
        while (source.poll(0, run) != Progress.ENDED) {
            if (!run.records.isEmpty()
                    && run.records.get(run.records.size() - 1).tNanos() >= end) {
                break;
            }
        }
        run.analysis.end("done");
        return run.records;
    }

    @Override
    public void reading(Reading reading) {
        analysis.reading(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, String detail) {
        analysis.link(tNanos, state, detail);
    }

    @Override
    public void garbled(String where, String problem) {
        throw new AssertionError(where + " " + problem);
    }

    @Override
    public void mark(String text) {
        analysis.mark(text);
    }

    @Override
    public void nextAdjuster(String name) {
        analysis.adjusterEnded(Adjuster.Action.DONE);
        analysis.nextAdjuster(name);
    }
}
