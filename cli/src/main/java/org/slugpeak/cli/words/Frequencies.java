package org.slugpeak.cli.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How frequencies are written. All methods are pure. */
public final class Frequencies {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private Frequencies() {}

    /**
     * A frequency as the trade says it.
     *
     * @param hz Hz; NaN where it is not known
     * @return in kHz up to 3 MHz, in MHz above, with its unit
     */
    public static String plain(double hz) {
        return hz < MEGAHERTZ_FROM_HZ ? number(hz / 1e3) + " kHz" : number(hz / 1e6) + " MHz";
    }

    /**
     * A number without zeros that say nothing.
     *
     * @param value in any unit
     * @return to six figures
     */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

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
