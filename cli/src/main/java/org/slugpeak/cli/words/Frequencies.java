package org.slugpeak.cli.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How frequencies are written. All methods are pure. */
public final class Frequencies {

    private Frequencies() {}

    /**
     * A frequency of a response curve.
     *
     * @param hz Hz
     * @return kHz, to 10 Hz
     */
    public static String kHz(double hz) {
        return BigDecimal.valueOf(hz / 1e3).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }
}
