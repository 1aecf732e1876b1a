package org.slugpeak.core.rehearsal;

import java.util.List;

/**
 * What is tuned over one range. One thread at a time.
 *
 * @param oscillator runs above the pointer
 * @param signals aerial circuit and radio-frequency circuits
 * @param signalQ quality factor of each of these
 */
record BandCircuits(TunedRange oscillator, List<TunedRange> signals, double signalQ) {

    /** What a signal is worth at the converter, 1 with everything in tune. */
    double response(double hz, double dialHz) {
        double product = 1;
        for (TunedRange each : signals) {
            product *= each.response(hz, dialHz, signalQ);
        }
        return product;
    }
}
