package org.slugpeak.bridge.source;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/**
 * One number as a meter writes it: NR1, NR2 and NR3 of IEEE 488.2 section 8.7 (and the freer forms of section 7.7.2.1), with
 * or without a unit behind it, or one of the special answers of SCPI-1999 volume 1 section 7.2.1: 9.9E37 for beyond range,
 * 9.91E37 for not a number. Bench voltmeters of one older family send 9.99999E+35 when over range and 9.99999E+31 to
 * 9.99999E+34 for other faults, and hand-held meters write OL: both are understood. Immutable; any thread may use it.
 *
 * @param value in the base unit ({@code V} where the meter says {@code mV}); 0 where the condition has no value
 * @param condition how far it can be believed
 * @param unit base unit, empty where none was written
 * @param resolution the step of the last digit in the base unit; empty where written with an exponent
 * @param padded whether the number ends in zeros that need not be there, which tells that its decimals follow the range
 */
public record MeterField(double value, Condition condition, String unit, OptionalDouble resolution, boolean padded) {

    /** A relative error that a meter which computes in single precision makes when it writes 9.91E37. */
    private static final double SINGLE_PRECISION = 1e-6;

    private static final double NOT_A_NUMBER = 9.91e37;
    private static final double OVER_RANGE_FROM = 1e35;
    private static final double NO_VOLTAGE_FROM = 1e30;

    private static final Pattern NUMBER =
            Pattern.compile("([+-]?)\\s*(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?\\s*(.*)", Pattern.DOTALL);
    private static final Pattern UNIT =
            Pattern.compile("([A-Za-z%\u00b5\u03bc\u03a9]*)(?:\\s+(?:DC|AC|RMS|AUTO))*", Pattern.CASE_INSENSITIVE);
    private static final Pattern COUPLING = Pattern.compile("(?<=.)(?:DC|AC|RMS)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern MARKS = Pattern.compile("[+\\-. ]");

    private static final Set<String> BEYOND_RANGE =
            Set.of("OL", "OVLD", "OVER", "OVERLOAD", "OVERFLOW", "INF", "INFINITY");
    private static final Set<String> NOTHING = Set.of("", "NAN", "N/A", "NA");

    private static final Map<String, Double> PREFIXES =
            Map.of("n", 1e-9, "u", 1e-6, "\u00b5", 1e-6, "\u03bc", 1e-6, "m", 1e-3, "", 1.0, "k", 1e3, "M", 1e6);
    private static final Set<String> BASE_UNITS = Set.of("V", "A", "W", "Hz");

    /**
     * Reads one field.
     *
     * @param text as it was sent
     * @return empty where it is no number and no special answer
     */
    public static Optional<MeterField> parse(String text) {
        String trimmed = text.strip();
        Matcher number = NUMBER.matcher(trimmed);
        return number.matches() ? number(number) : word(trimmed);
    }

    /**
     * As a reading.
     *
     * @param tNanos when
     * @return the reading, with its condition
     */
    public Reading at(long tNanos) {
        return new Reading(tNanos, value, condition);
    }

    private static Optional<MeterField> number(Matcher match) {
        Matcher unit = UNIT.matcher(match.group(4).strip());
        if (!unit.matches()) {
            return Optional.empty();
        }
        String exponent = Optional.ofNullable(match.group(3)).orElse("");
        double plain = Double.parseDouble(match.group(1) + match.group(2) + exponent);
        if (isNear(Math.abs(plain), NOT_A_NUMBER)) {
            return Optional.of(without(Condition.NO_VALUE));
        }
        if (Math.abs(plain) >= NO_VOLTAGE_FROM) {
            return Optional.of(without(Math.abs(plain) >= OVER_RANGE_FROM ? Condition.OVER_RANGE : Condition.NO_VALUE));
        }
        String written = COUPLING.matcher(unit.group(1)).replaceFirst("");
        double scale = scaleOf(written);
        return Optional.of(new MeterField(
                plain * scale,
                Condition.OK,
                scale == 1 ? written : written.substring(1),
                exponent.isEmpty() ? OptionalDouble.of(scale * step(match.group(2))) : OptionalDouble.empty(),
                exponent.isEmpty()
                        && decimals(match.group(2)) > 1
                        && match.group(2).endsWith("0")));
    }

    private static Optional<MeterField> word(String text) {
        String first = text.split("\\s", 2)[0];
        String plain =
                MARKS.matcher(first).replaceAll("").toUpperCase(Locale.ROOT).replace('0', 'O');
        if (BEYOND_RANGE.contains(plain)) {
            return Optional.of(without(Condition.OVER_RANGE));
        }
        boolean dashes = plain.isEmpty() && first.contains("--");
        return dashes || (!plain.isEmpty() && NOTHING.contains(plain))
                ? Optional.of(without(Condition.NO_VALUE))
                : Optional.empty();
    }

    private static MeterField without(Condition condition) {
        return new MeterField(0, condition, "", OptionalDouble.empty(), false);
    }

    private static double scaleOf(String unit) {
        for (String base : BASE_UNITS) {
            if (unit.endsWith(base)) {
                return PREFIXES.getOrDefault(unit.substring(0, unit.length() - base.length()), 1.0);
            }
        }
        return 1;
    }

    private static double step(String digits) {
        return Double.parseDouble("1e-" + decimals(digits));
    }

    private static int decimals(String digits) {
        int point = digits.indexOf('.');
        return point < 0 ? 0 : digits.length() - point - 1;
    }

    private static boolean isNear(double value, double target) {
        return Math.abs(value - target) <= SINGLE_PRECISION * target;
    }
}
