package org.slugpeak.cli.report;

import java.util.Locale;

/** Levels as decibels. */
final class Decibels {

    private Decibels() {}

    /** From one level to another; units that are decibels already are subtracted. NaN where it has no meaning. */
    static double between(double from, double to, String unit) {
        if (unit.toLowerCase(Locale.ROOT).startsWith("db")) {
            return to - from;
        }
        double ratio = Math.abs(to / from);
        return ratio > 0 && Double.isFinite(ratio) ? 20 * Math.log10(ratio) : Double.NaN;
    }

    /** A spread of a level, as decibels. */
    static double spread(double sigma, double level, String unit) {
        if (unit.toLowerCase(Locale.ROOT).startsWith("db")) {
            return sigma;
        }
        double ratio = Math.abs(sigma / level);
        return Double.isFinite(ratio) ? 20 * Math.log10(1 + ratio) : Double.NaN;
    }

    static String signed(double dB) {
        return Double.isNaN(dB) ? "" : String.format(Locale.ROOT, "%+.2f dB", Math.rint(dB * 100) / 100 + 0.0);
    }
}
