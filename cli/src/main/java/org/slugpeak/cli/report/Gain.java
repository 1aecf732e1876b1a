package org.slugpeak.cli.report;

import java.util.Locale;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Rounded;

/** Levels as decibels. */
final class Gain {

    private Gain() {}

    /** Whether levels in this unit are decibels already. */
    static boolean isDb(String unit) {
        return unit.toLowerCase(Locale.ROOT).startsWith("db");
    }

    /** From one level to another; NaN where it has no meaning. */
    static double between(double from, double to) {
        double ratio = Math.abs(to / from);
        return ratio > 0 && Double.isFinite(ratio) ? Decibels.of(ratio) : Double.NaN;
    }

    /** For a drawing: one decimal. */
    static String tenths(double dB) {
        return String.format(Locale.ROOT, "%+.1f dB", Rounded.to(dB, 1));
    }

    static String signed(double dB) {
        return Double.isNaN(dB) ? "" : String.format(Locale.ROOT, "%+.2f dB", Rounded.to(dB, 2));
    }
}
