package org.slugpeak.core.rehearsal;

import org.apache.commons.math3.complex.Complex;
import org.slugpeak.core.receiver.SingleTuned;

/**
 * A circuit that takes one frequency out of the aerial. One thread at a time.
 *
 * @param tunedHz with its core in the working position
 * @param core that tunes it
 */
record WaveTrap(double tunedHz, Knob core) {

    /** Loaded by the aerial; made up, of usual size. */
    static final double Q = 40;

    /** What it takes out in tune: leaves a fifth, 14 dB (made up). */
    private static final double DEPTH = 0.8;

    double response(double hz) {
        double resonance = tunedHz / Math.sqrt(1 + core.effect());
        Complex taken = new SingleTuned(resonance, Q).response(hz).multiply(DEPTH);
        return Complex.ONE.subtract(taken).abs();
    }
}
