package org.slugpeak.core.peak.bench;

import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/** Passes every word on to a hand. */
class Obeyed implements PeakListener {

    final Hand hand;

    Obeyed(Hand hand) {
        this.hand = hand;
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        hand.passed(tNanos, best, bestAtNanos, dropDb);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        hand.returned(tNanos, value, lossDb);
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        hand.held(tNanos, value, lossDb);
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        hand.twoPeaks(tNanos, first, second, dipDb);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        hand.noPeak(tNanos, reason);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        hand.hint(tNanos, hint, amount);
    }
}
