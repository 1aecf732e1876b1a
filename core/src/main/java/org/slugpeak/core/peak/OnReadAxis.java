package org.slugpeak.core.peak;

/** Passes on what is found, with the times that the stamps of the readings have: a clock that is set back is inside only. One thread at a time. */
final class OnReadAxis implements PeakListener {

    private final TimeBase time;
    private final PeakListener listener;

    OnReadAxis(TimeBase time, PeakListener listener) {
        this.time = time;
        this.listener = listener;
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        listener.passed(time.asRead(tNanos), best, time.asRead(bestAtNanos), dropDb);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        listener.returned(time.asRead(tNanos), value, lossDb);
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        listener.held(time.asRead(tNanos), value, lossDb);
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        listener.twoPeaks(time.asRead(tNanos), first, second, dipDb);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        listener.noPeak(time.asRead(tNanos), reason);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        listener.hint(time.asRead(tNanos), hint, amount);
    }
}
