package org.slugpeak.core.session;

import java.util.Locale;
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
        sink.take(new Advice(tNanos, hint.code(), text(hint, amount), amount));
    }

    /** A hint in words for the user. */
    static String text(Hint hint, double amount) {
        return switch (hint) {
            case NEGATIVE_GOING -> "the reading goes negative: more negative counts as more";
            case WRONG_WAY -> "falling: turn the other way";
            case BEST_AGED -> String.format(Locale.ROOT, "the old best is out of reach: lowered by %.2f dB", amount);
            case STOPPED_SHORT ->
                String.format(Locale.ROOT, "still %.2f dB from the best: turn on a little, or back", amount);
            case SIGNAL_GONE -> "no signal: is the generator on, and the meter connected?";
            case SIGNAL_BACK -> "the signal is back: the best is still known";
            case TURN_SLOWER -> String.format(Locale.ROOT, "turn %.1f times slower", amount);
        };
    }
}
