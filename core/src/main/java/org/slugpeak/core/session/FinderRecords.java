package org.slugpeak.core.session;

import org.slugpeak.core.level.LevelWatch;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/** Writes what the peak finder finds as session records, in volts as they are read, and lets the level watch know. */
final class FinderRecords implements PeakListener {

    private final RecordSink sink;
    private final LevelWatch level;

    FinderRecords(RecordSink sink, LevelWatch level) {
        this.sink = sink;
        this.level = level;
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        sink.take(new Passed(tNanos, level.fromFinder(best), bestAtNanos, dropDb));
        level.passed(tNanos, best);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        sink.take(new Returned(tNanos, level.fromFinder(value), lossDb));
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        sink.take(new Held(tNanos, level.fromFinder(value), lossDb));
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        sink.take(new TwoPeaks(tNanos, level.fromFinder(first), level.fromFinder(second), dipDb));
        level.twoPeaks(tNanos, dipDb);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        sink.take(new NoPeak(tNanos, reason));
        level.noPeak(tNanos, reason);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        sink.take(new Finding.Hinted(tNanos, hint, amount));
    }
}
