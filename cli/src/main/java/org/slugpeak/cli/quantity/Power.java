package org.slugpeak.cli.quantity;

import java.util.Map;

/** A power, W unless a unit is given; the value is in W. */
public final class Power extends UnitConverter {

    /** Called by the command-line library. */
    public Power() {
        super("power", "W", Map.of("mW", 1e-3, "W", 1.0));
    }
}
