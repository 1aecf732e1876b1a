package org.slugpeak.cli.quantity;

import java.util.Map;

/** A voltage, V unless a unit is given; the value is in V. */
public final class Voltage extends UnitConverter {

    /** Called by the command-line library. */
    public Voltage() {
        super("voltage", "V", Map.of("uV", 1e-6, "mV", 1e-3, "V", 1.0));
    }
}
