package org.slugpeak.bridge.source;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
            Pattern.compile("([+-]?)\\s*(\\d+\\.?\\d*|\\.\\d+)(?:[eE]([+-]?\\d{1,5}))?\\s*(.*)", Pattern.DOTALL);
    private static final Pattern UNIT =
            Pattern.compile("([A-Za-z%\u00b5\u03bc\u03a9]*)(?:\\s+(?:DC|AC|RMS|AUTO))*", Pattern.CASE_INSENSITIVE);
    private static final Pattern COUPLING = Pattern.compile("(?<=.)(?:DC|AC|RMS)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern MARKS = Pattern.compile("[+\\-. ]");

    private static final Set<String> BEYOND_RANGE =
            Set.of("OL", "OVLD", "OVER", "OVERLOAD", "OVERFLOW", "INF", "INFINITY");
    private static final Set<String> NOTHING = Set.of("", "NAN", "N/A", "NA");

    private static final Map<String, Integer> PREFIXES =
            Map.of("p", -12, "n", -9, "u", -6, "\u00b5", -6, "\u03bc", -6, "m", -3, "", 0, "k", 3, "M", 6);
    private static final Set<String> SCALED_UNITS =
            Set.of("V", "A", "W", "Hz", "F", "H", "s", "ohm", "Ohm", "OHM", "\u03a9");
    private static final Set<String> PLAIN_UNITS =
            Set.of("", "dB", "dBm", "dBV", "dBu", "dBFS", "%", "deg", "C", "K", "counts");

    /**
     * Reads one field.
     *
     * @param text as it was sent
     * @return empty where it is no number and no special answer
     */
    public static Optional<MeterField> parse(String text) {
        String trimmed = text.strip();
        Matcher number = NUMBER.matcher(trimmed);
        return number.matches() ? number(number).or(() -> word(trimmed)) : word(trimmed);
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
        String written = COUPLING.matcher(unit.group(1)).replaceFirst("");
        OptionalInt shift = powerOfTen(written);
        if (shift.isEmpty()) {
            return Optional.empty();
        }
        Optional<Integer> exponent = Optional.ofNullable(match.group(3)).map(Integer::valueOf);
        double number =
                Double.parseDouble(match.group(1) + match.group(2) + "e" + (exponent.orElse(0) + shift.getAsInt()));
        Optional<Condition> special = special(Math.abs(number));
        return Optional.of(special.map(MeterField::without)
                .orElseGet(() -> plain(number, match.group(2), exponent.isEmpty(), shift.getAsInt(), written)));
    }

    private static Optional<Condition> special(double magnitude) {
        if (Math.abs(magnitude - NOT_A_NUMBER) <= SINGLE_PRECISION * NOT_A_NUMBER) {
            return Optional.of(Condition.NO_VALUE);
        }
        if (magnitude >= NO_VOLTAGE_FROM) {
            return Optional.of(magnitude >= OVER_RANGE_FROM ? Condition.OVER_RANGE : Condition.NO_VALUE);
        }
        return Optional.empty();
    }

    private static MeterField plain(double number, String digits, boolean fixedPoint, int shift, String unit) {
        int point = digits.indexOf('.');
        int decimals = point < 0 ? 0 : digits.length() - point - 1;
        return new MeterField(
                number,
                Condition.OK,
                shift == 0 ? unit : unit.substring(1),
                fixedPoint ? OptionalDouble.of(Double.parseDouble("1e" + (shift - decimals))) : OptionalDouble.empty(),
                fixedPoint && decimals > 1 && digits.endsWith("0"));
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

    /** Empty where it is no unit: a letter behind a number is more often damage. Megavolts are not met on a bench. */
    private static OptionalInt powerOfTen(String unit) {
        if (PLAIN_UNITS.contains(unit)) {
            return OptionalInt.of(0);
        }
        for (String base : SCALED_UNITS) {
            boolean fits = unit.endsWith(base) && !unit.equals("MV");
            String prefix = fits ? unit.substring(0, unit.length() - base.length()) : "-";
            if (PREFIXES.containsKey(prefix)) {
                return OptionalInt.of(PREFIXES.get(prefix));
            }
        }
        return OptionalInt.empty();
    }
}
