package org.slugpeak.cli.curve;

import org.slugpeak.bridge.source.BridgeException;

/** Who sets the generator. Called in the session's thread. */
@FunctionalInterface
public interface GeneratorControl {

    /** The user sets it by hand: what is asked for is taken for what it is. */
    GeneratorControl BY_HAND = hz -> hz;

    /**
     * Sets the frequency.
     *
     * @param hz wanted, Hz
     * @return what it is, Hz
     * @throws BridgeException where the generator does not answer or refuses
     */
    double frequency(double hz) throws BridgeException;
}
