package org.slugpeak.core.rehearsal;

import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.Discriminator;

/**
 * The discriminator or ratio detector that ends a strip, with windings that are turned. One thread at a time.
 *
 * @param transformer primary first, tuned secondary second
 */
record FmDetector(Transformer transformer) {

    /** The rectified halves for a volt across the primary in tune. */
    Discriminator.Halves at(double hz) {
        CoupledPair tuned = transformer.tuned();
        double unit = tuned.inputImpedance(tuned.primary().resonanceHz()).abs();
        return new Discriminator(transformer.pair(), 1 / unit).at(hz);
    }
}
