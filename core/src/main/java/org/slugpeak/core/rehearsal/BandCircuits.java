package org.slugpeak.core.rehearsal;

import java.util.List;
import org.slugpeak.core.receiver.PulledOscillator;

/**
 * What is tuned over one range. One thread at a time.
 *
 * @param oscillator runs above the pointer
 * @param signals aerial circuit and radio-frequency circuits
 * @param signalQ quality factor of each of these
 * @param couplingFarad by which the last of them, at the converter, pulls the oscillator
 */
record BandCircuits(TunedRange oscillator, List<TunedRange> signals, double signalQ, double couplingFarad) {

    /** Where the oscillator runs, pulled by the circuit at the converter; not at all where it would have to jump. */
    double oscillatorHz(double dialHz) {
        double freeHz = oscillator.hz(dialHz);
        TunedRange pulling = signals.get(signals.size() - 1);
        double added = pulling.addedFarad(dialHz);
        if (added == 0) {
            return freeHz;
        }
        double pullHz = new PulledOscillator(
                        freeHz, oscillator.farad(freeHz), dialHz, pulling.farad(dialHz), signalQ, couplingFarad)
                .pullHz(added);
        return Double.isNaN(pullHz) ? freeHz : freeHz + pullHz;
    }

    /** What a signal is worth at the converter, 1 with everything in tune. */
    double response(double hz, double dialHz) {
        double product = 1;
        for (TunedRange each : signals) {
            product *= each.response(hz, dialHz, signalQ);
        }
        return product;
    }
}
