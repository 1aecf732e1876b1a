package org.slugpeak.core.receiver;

import org.apache.commons.math3.complex.Complex;

/**
 * One tuned circuit, as its response relative to resonance: {@code 1 / (1 + jQ(f/f0 - f0/f))}. The universal resonance
 * curve {@code 1/sqrt(1 + 4a^2)}, {@code a = Q (f - f0)/f0}, is its form near resonance: F. E. Terman, Radio Engineers'
 * Handbook, 1943, section 3. Immutable; any thread may use it.
 *
 * @param resonanceHz positive
 * @param q quality factor; positive
 */
public record SingleTuned(double resonanceHz, double q) {

    public SingleTuned {
        if (!(resonanceHz > 0 && q > 0)) {
            throw new IllegalArgumentException("a tuned circuit needs a positive resonance and Q");
        }
    }

    /**
     * The exact response.
     *
     * @param frequencyHz positive
     * @return 1 at resonance
     */
    public Complex response(double frequencyHz) {
        return new Complex(1, q * (frequencyHz / resonanceHz - resonanceHz / frequencyHz)).reciprocal();
    }

    /**
     * The universal resonance curve.
     *
     * @param a fractional detuning times Q
     * @return 1 for a = 0; the phase lags for positive a
     */
    public static Complex universal(double a) {
        return new Complex(1, 2 * a).reciprocal();
    }

    /**
     * Width at half power.
     *
     * @return hertz; exactly {@code f0/Q}
     */
    public double bandwidthHz() {
        return resonanceHz / q;
    }

    /**
     * By how much the half-power width of equal circuits in cascade is less than that of one:
     * {@code sqrt(2^(1/n) - 1)}.
     *
     * @param circuits how many; 1 or more
     * @return ratio, 1 for one circuit, less for more
     */
    public static double shrinkage(int circuits) {
        return Math.sqrt(Math.pow(2, 1.0 / circuits) - 1);
    }
}
