package org.slugpeak.core.progress;

import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.session.Guard;

/** The hand turns the adjuster. */
sealed interface InHand extends AtAdjuster permits Turning, Rocking {

    @Override
    default PlanPhase noPeak(NoPeakReason reason) {
        if (reason == NoPeakReason.END_OF_TRAVEL) {
            job().say(Guard.EndOfTravel::new);
        }
        return this;
    }
}
