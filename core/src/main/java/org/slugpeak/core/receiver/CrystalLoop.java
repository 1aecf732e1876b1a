package org.slugpeak.core.receiver;

import org.apache.commons.math3.complex.Complex;

/**
 * A single crystal between a source and a tuned load, its holder neutralised by the phasing capacitor. The crystal is a coil, a
 * capacitor and a resistor in series: K. S. Van Dyke, The Piezo-Electric Resonator and Its Equivalent Network, Proceedings of the IRE
 * 16 (1928) 742, from memory. A load out of tune is reactive and pulls the maximum away from the series resonance. That the load keeps
 * its Q when it is turned costs half a percent over 2 percent of inductance. Immutable; any thread may use it.
 *
 * @param crystalHz series resonance; positive
 * @param henry coil of its equivalent; positive
 * @param sourceOhm loss of the crystal and source together; positive
 * @param loadOhm load in tune; positive
 * @param loadQ quality factor of the load; positive
 */
public record CrystalLoop(double crystalHz, double henry, double sourceOhm, double loadOhm, double loadQ) {

    /**
     * What comes through.
     *
     * @param hz of the signal; positive
     * @param loadHz that the load is tuned to; positive
     * @return volts across the load for a volt of source
     */
    public double response(double hz, double loadHz) {
        Complex load = new SingleTuned(loadHz, loadQ).response(hz).multiply(loadOhm);
        double reactance = 2 * Math.PI * henry * (hz - crystalHz * crystalHz / hz);
        return load.divide(load.add(new Complex(sourceOhm, reactance))).abs();
    }

    /**
     * Width at half power with the load in tune: {@code R/(2 pi L)}.
     *
     * @return Hz
     */
    public double widthHz() {
        return (sourceOhm + loadOhm) / (2 * Math.PI * henry);
    }
}
