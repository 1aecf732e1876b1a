package org.slugpeak.core.rehearsal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The amplifier of one intermediate frequency. One thread at a time.
 *
 * @param centreHz its frequency
 * @param transformers before the detector, in any order
 * @param detector the discriminator or ratio detector that ends it
 */
record IfStrip(double centreHz, List<Transformer> transformers, Optional<FmDetector> detector) {

    /** So many widths from the middle a strip passes no more than its noise. */
    private static final double EDGE = 2;

    /** Gain from the converter's grid to the detector, 1 with everything in tune. */
    double response(double hz) {
        double product = 1;
        for (Transformer each : transformers) {
            product *= each.response(hz);
        }
        return product;
    }

    Stream<Winding> windings() {
        return Stream.concat(transformers.stream(), detector.stream().map(FmDetector::transformer))
                .flatMap(each -> each.windings().stream());
    }

    /** A frequency, or the middle of the band where it lies far outside: then noise is all that a detector sees. */
    double inBandHz(double hz) {
        return Math.abs(hz - centreHz) > EDGE * widthHz() ? centreHz : hz;
    }

    /** How wide a signal passes, about: one winding's width over the number of them. */
    double widthHz() {
        double q = windings().findFirst().map(each -> each.tuned().q()).orElse(1.0);
        return centreHz / q;
    }
}
