package org.slugpeak.core.sheet;

import org.slugpeak.core.figure.Uncertainty;

/**
 * Output for an input. Immutable; any thread may use it.
 *
 * @param inputDb dB over a volt EMF
 * @param outputDb dB over whatever the output counts in; infinite where it is beyond what can be read
 * @param uncertainty of the output
 */
record TransferPoint(double inputDb, double outputDb, Uncertainty uncertainty) {

    boolean isLevel() {
        return Double.isFinite(outputDb);
    }
}
