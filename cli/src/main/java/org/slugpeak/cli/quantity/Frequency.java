package org.slugpeak.cli.quantity;

import java.util.Map;

/** A frequency, kHz unless a unit is given; the value is in Hz. */
public final class Frequency extends UnitConverter {

    /** Called by the command-line library. */
    public Frequency() {
        super("frequency", "kHz", Map.of("Hz", 1.0, "kHz", 1e3, "MHz", 1e6));
    }
}
