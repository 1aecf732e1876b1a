package org.slugpeak.cli.moment;

import java.util.Locale;
import java.util.Set;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.reading.Rounded;

/** Writes numbers the way a person reads them: few digits, and as many before as after a small change. Stateless. */
public final class Figures {

    private static final Set<String> TAKES_PREFIX = Set.of("V", "A", "W", "Hz");
    private static final double MILLI_BELOW = 0.1;
    private static final int MOST_DECIMALS = 9;
    private static final double MICRO_BELOW = 1e-4;

    private Figures() {}

    /**
     * A number and its unit, apart.
     *
     * @param digits four significant digits at the size that was asked for
     * @param unit with its prefix; may be empty
     */
    public record Figure(String digits, String unit) {

        @Override
        public String toString() {
            return unit.isEmpty() ? digits : digits + " " + unit;
        }
    }

    /**
     * Writes a value with the digits that a quantity of a given size deserves, so that the decimal point stands still while
     * the value moves.
     *
     * @param value in the unit; NaN is two dashes
     * @param size in the unit; NaN where nothing is known of it
     * @param unit of the value; may be empty
     * @return at most four decimals
     */
    public static Figure of(double value, double size, String unit) {
        if (Double.isNaN(value)) {
            return new Figure("--", unit);
        }
        double magnitude = Double.isNaN(size) ? Math.abs(value) : Math.max(Math.abs(size), Math.abs(value));
        if (TAKES_PREFIX.contains(unit) && magnitude > 0 && magnitude < MICRO_BELOW) {
            return new Figure(digits(value * 1e6, magnitude * 1e6), "u" + unit);
        }
        if (TAKES_PREFIX.contains(unit) && magnitude > 0 && magnitude < MILLI_BELOW) {
            return new Figure(digits(value * 1e3, magnitude * 1e3), "m" + unit);
        }
        return new Figure(digits(value, magnitude), unit);
    }

    private static String digits(double value, double magnitude) {
        int before = magnitude < 1 ? 1 : (int) Math.floor(Math.log10(magnitude)) + 1;
        int decimals = Math.max(0, Math.min(4, 4 - before));
        return String.format(Locale.ROOT, "%." + decimals + "f", Rounded.to(value, decimals));
    }

    /** A value and how well it is known, to two digits of that; without an error, as large as it is. */
    static String withError(double value, double error, String unit) {
        if (!(error > 0)) {
            return of(value, value, unit).toString();
        }
        int decimals = (int) Math.max(0, Math.min(MOST_DECIMALS, 1 - Math.floor(Math.log10(error))));
        String format = "%." + decimals + "f%s (+-%." + decimals + "f)";
        return String.format(Locale.ROOT, format, value, unit.isEmpty() ? "" : " " + unit, error);
    }

    /**
     * Decibels: tenths, and hundredths where tenths would say nothing.
     *
     * @param decibels not negative; NaN is two dashes
     * @return with its unit
     */
    public static String decibels(double decibels) {
        if (Double.isNaN(decibels)) {
            return "-- dB";
        }
        if (decibels >= Level.FARTHEST_DB) {
            return SeekPhrase.OVER_DB.of(Level.FARTHEST_DB);
        }
        return String.format(Locale.ROOT, decibels < 0.095 ? "%.2f dB" : "%.1f dB", decibels);
    }
}
