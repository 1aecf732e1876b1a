package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** Runs a simulated bench through the analysis as a command would, and keeps what came of it. */
final class SimRun extends AnalysisListener {

    private final List<SessionRecord> records;

    private SimRun(Analysis analysis, List<SessionRecord> records) {
        super(analysis);
        this.records = records;
    }

    private static SimRun heardBy(RecordSink hand) {
        List<SessionRecord> records = new ArrayList<>();
        Analysis analysis = new Analysis(PeakSettings.defaults(), record -> {
            records.add(record);
            hand.take(record);
        });
        return new SimRun(analysis, records);
    }

    static List<SessionRecord> of(SimSource source, double seconds) throws BridgeException {
        SimRun run = heardBy(source.hand());
        long end = (long) (seconds * 1e9);
        while (source.poll(0, run) != Progress.ENDED) {
            if (!run.records.isEmpty()
                    && run.records.get(run.records.size() - 1).tNanos() >= end) {
                break;
            }
        }
        run.analysis().end(EndReason.Known.DONE);
        return run.records;
    }

    @Override
    public void garbled(String where, String problem) {
        throw new AssertionError(where + " " + problem);
    }
}
