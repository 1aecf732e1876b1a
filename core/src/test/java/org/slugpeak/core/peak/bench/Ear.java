package org.slugpeak.core.peak.bench;

import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/** Hears everything and makes nothing of it, but for what is overridden. */
class Ear implements PeakListener {

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {}

    @Override
    public void returned(long tNanos, double value, double lossDb) {}

    @Override
    public void held(long tNanos, double value, double lossDb) {}

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {}

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {}

    @Override
    public void hint(long tNanos, Hint hint, double amount) {}
}
