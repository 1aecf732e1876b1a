package org.slugpeak.cli.quantity;

import java.util.Locale;

/** Frequencies as the trade writes them. */
public final class FrequencyText {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private FrequencyText() {}

    /**
     * In kHz below 3 MHz, in MHz from there.
     *
     * @param hz Hz
     * @return number and unit, to 0.1 kHz or 1 kHz
     */
    public static String of(double hz) {
        return Math.abs(hz) < MEGAHERTZ_FROM_HZ
                ? trimmed(String.format(Locale.ROOT, "%.1f", hz / 1e3)) + " kHz"
                : trimmed(String.format(Locale.ROOT, "%.3f", hz / 1e6)) + " MHz";
    }

    private static String trimmed(String decimal) {
        return decimal.contains(".") ? decimal.replaceAll("0+$", "").replaceAll("\\.$", "") : decimal;
    }
}
