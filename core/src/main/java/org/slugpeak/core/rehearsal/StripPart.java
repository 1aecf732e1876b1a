package org.slugpeak.core.rehearsal;

import java.util.List;

/** What a signal passes on its way from a converter to a detector. One thread at a time. */
interface StripPart {

    /** Its gain now, 1 with everything in its working position at the frequency that it is tuned to. */
    double response(double hz);

    /** How wide a signal it passes, about. */
    double widthHz();

    /** What is turned in it and may be damped. */
    List<Winding> windings();
}
