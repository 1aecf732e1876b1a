package org.slugpeak.cli.quantity;

import java.util.Map;

/** A length, cm unless a unit is given; the value is in m. */
public final class Length extends UnitConverter {

    /** Called by the command-line library. */
    public Length() {
        super("length", "cm", Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0));
    }
}
