package org.slugpeak.cli.quantity;

import java.util.Map;

/** A resistance, ohm unless a unit is given; the value is in ohm. */
public final class Resistance extends UnitConverter {

    /** Called by the command-line library. */
    public Resistance() {
        super("resistance", "ohm", Map.of("ohm", 1.0, "k", 1e3, "kohm", 1e3, "M", 1e6, "Mohm", 1e6));
    }
}
