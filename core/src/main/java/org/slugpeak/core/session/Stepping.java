package org.slugpeak.core.session;

import java.util.Optional;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.steps.StepFinder;
import org.slugpeak.core.steps.StepListener;
import org.slugpeak.core.steps.StepsBack;

/** Turns settled values, one for each step of a turn, into session records. One thread at a time. */
final class Stepping implements StepListener {

    private final RecordSink sink;
    private StepFinder finder;

    Stepping(Seek seek, RecordSink sink) {
        this.sink = sink;
        this.finder = new StepFinder(seek, this);
    }

    /** What is made of a reading, after the events it brought. */
    ReadingTaken take(Reading reading) {
        if (reading.condition().isTrusted()) {
            finder.accept(reading.tNanos(), reading.value());
        } else {
            finder.acceptNone(reading.tNanos());
        }
        return new ReadingTaken(
                reading, finder.value(), finder.best(), finder.bestSigma(), finder.ofBest(), finder.trend());
    }

    /** False where there is nothing to take back. */
    boolean undo() {
        return finder.undo();
    }

    void restart() {
        finder.restart();
    }

    void seek(Seek wanted) {
        finder = new StepFinder(wanted, this);
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb, StepsBack back) {
        sink.take(new Passed(tNanos, best, bestAtNanos, dropDb, Optional.of(back)));
    }

    @Override
    public void further(long tNanos, StepsBack back) {
        sink.take(new Finding.FurtherPast(tNanos, back));
    }

    /** A settled value needs no dwell: what has returned is held. */
    @Override
    public void returned(long tNanos, double value, double lossDb) {
        sink.take(new Returned(tNanos, value, lossDb));
        sink.take(new Held(tNanos, value, lossDb));
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        sink.take(new NoPeak(tNanos, reason));
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        sink.take(new Finding.Hinted(tNanos, hint, amount));
    }
}
