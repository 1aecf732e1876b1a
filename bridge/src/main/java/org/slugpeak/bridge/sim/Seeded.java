package org.slugpeak.bridge.sim;

import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.receiver.Fault;

/** Which suspicion each seeded fault should raise. Stateless. */
final class Seeded {

    private Seeded() {}

    static Suspicion meantBy(Fault fault) {
        return switch (fault) {
            case STRONG -> Suspicion.TOO_STRONG;
            case WRONG_IF -> Suspicion.WRONG_IF;
            case IMAGE -> Suspicion.IMAGE;
            case HARMONIC -> Suspicion.HARMONIC;
            case SLUG_END -> Suspicion.SLUG_END;
            case MICA -> Suspicion.MICA;
            case PADDER -> Suspicion.PADDER;
            case SECONDARY -> Suspicion.WINDING;
            case LOADING -> Suspicion.LOADING;
            case REGENERATION -> Suspicion.REGENERATION;
            case HUM -> Suspicion.HUM;
        };
    }
}
