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

    /** A spread of a level, as decibels. */
    static double spread(double sigma, double level, String unit) {
        if (isDb(unit)) {
            return sigma;
        }
        double ratio = Math.abs(sigma / level);
        return Double.isFinite(ratio) ? Decibels.of(1 + ratio) : Double.NaN;
    }

    /** For a drawing: one decimal. */
    static String tenths(double dB) {
        return String.format(Locale.ROOT, "%+.1f dB", Rounded.to(dB, 1));
    }

    static String signed(double dB) {
        return Double.isNaN(dB) ? "" : String.format(Locale.ROOT, "%+.2f dB", Rounded.to(dB, 2));
    }
}
