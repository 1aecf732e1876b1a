package org.slugpeak.core.receiver;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;

/**
 * An oscillator that the aerial circuit pulls through a small capacitance: strays, or the space charge of the converter, which acts
 * like a negative one. What the oscillator's tank sees is the aerial circuit in series with that capacitance; it oscillates where
 * all susceptance together is nil. Immutable; any thread may use it.
 *
 * @param oscillatorHz before the aerial trimmer is turned; positive
 * @param oscillatorFarad of its tank; positive
 * @param signalHz that the aerial circuit is tuned to; positive
 * @param signalFarad of the aerial circuit; positive
 * @param signalQ quality factor of the aerial circuit; positive
 * @param couplingFarad between both; not 0
 */
public record PulledOscillator(
        double oscillatorHz,
        double oscillatorFarad,
        double signalHz,
        double signalFarad,
        double signalQ,
        double couplingFarad) {

    /** The root lies within so much of the oscillator's frequency, or the two circuits do not part. */
    private static final double REACH = 0.02;

    /** To either side; the nearest root counts. */
    private static final int STEPS = 200;

    /**
     * How far the aerial trimmer pulls it.
     *
     * @param trimmerFarad added to the aerial circuit; negative takes away
     * @return Hz, usually below 0 for more capacitance; NaN where it would have to jump
     */
    public double pullHz(double trimmerFarad) {
        double step = REACH / STEPS;
        for (int i = 0; i < STEPS; i++) {
            for (double low : new double[] {-(i + 1) * step, i * step}) {
                if (susceptance(low, trimmerFarad) < 0 && susceptance(low + step, trimmerFarad) >= 0) {
                    return oscillatorHz
                            * new BrentSolver(1e-14, 1e-14)
                                    .solve(200, x -> susceptance(x, trimmerFarad), low, low + step);
                }
            }
        }
        return Double.NaN;
    }

    /** Of everything at a frequency that lies by a fraction above that of the oscillator. */
    private double susceptance(double fraction, double trimmerFarad) {
        double rest = 2 * Math.PI * oscillatorHz;
        double inverseHenry = rest * (rest * oscillatorFarad + aerial(rest, 0));
        double omega = rest * (1 + fraction);
        return omega * oscillatorFarad - inverseHenry / omega + aerial(omega, trimmerFarad);
    }

    private double aerial(double omega, double trimmerFarad) {
        double tuned = 2 * Math.PI * signalHz;
        double inverseHenry = tuned * tuned * signalFarad;
        Complex circuit =
                new Complex(tuned * signalFarad / signalQ, omega * (signalFarad + trimmerFarad) - inverseHenry / omega);
        Complex coupling = new Complex(0, omega * couplingFarad);
        return circuit.multiply(coupling).divide(circuit.add(coupling)).getImaginary();
    }
}
