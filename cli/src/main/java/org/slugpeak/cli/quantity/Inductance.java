package org.slugpeak.cli.quantity;

import java.util.Map;

/** An inductance, microhenry unless a unit is given; the value is in henry. */
public final class Inductance extends UnitConverter {

    /** Called by the command-line library. */
    public Inductance() {
        super("inductance", "uH", Map.of("nH", 1e-9, "uH", 1e-6, "mH", 1e-3));
    }
}
