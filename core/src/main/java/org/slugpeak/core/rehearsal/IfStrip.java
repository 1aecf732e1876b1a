package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The amplifier of one intermediate frequency. One thread at a time.
 *
 * @param centreHz its frequency
 * @param parts before the detector, in any order; one at least
 * @param detector the discriminator or ratio detector that ends it
 */
record IfStrip(double centreHz, List<StripPart> parts, Optional<FmDetector> detector) {

    /** Gain from the converter's grid to the detector, 1 with everything in tune. */
    double response(double hz) {
        double product = 1;
        for (StripPart each : parts) {
            product *= each.response(hz);
        }
        return product;
    }

    Stream<Winding> windings() {
        return Stream.concat(parts.stream(), detector.stream().map(FmDetector::transformer))
                .flatMap(each -> each.windings().stream());
    }

    /** The same with something more in it. */
    IfStrip with(StripPart more) {
        List<StripPart> all = new ArrayList<>(parts);
        all.add(more);
        return new IfStrip(centreHz, all, detector);
    }

    /** How wide a signal passes, about: as wide as its narrowest part lets through. */
    double widthHz() {
        return parts.stream().mapToDouble(StripPart::widthHz).min().orElse(centreHz);
    }
}
