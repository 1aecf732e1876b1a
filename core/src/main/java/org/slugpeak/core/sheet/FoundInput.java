package org.slugpeak.core.sheet;

import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.Uncertainty;

/**
 * The input for an output. Immutable; any thread may use it.
 *
 * @param inputDb dB over a volt EMF
 * @param slope decibels of output for one of input there
 * @param uncertainty of the input
 * @param outcome whether it is that, or a bound
 */
record FoundInput(double inputDb, double slope, Uncertainty uncertainty, Figure.Outcome outcome) {

    boolean isMeasured() {
        return outcome == Figure.Outcome.MEASURED;
    }

    FoundInput with(Uncertainty other) {
        return new FoundInput(inputDb, slope, other, outcome);
    }
}
