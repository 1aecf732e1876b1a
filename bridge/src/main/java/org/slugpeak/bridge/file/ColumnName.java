package org.slugpeak.bridge.file;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.core.reading.Measurand;

/**
 * The name of a column, such as {@code time_ms}, {@code value (mV)} or {@code volts}, taken apart into what it is and its
 * unit. Immutable.
 *
 * @param base what it is, lower case; may be empty
 * @param unit as written; may be empty
 */
record ColumnName(String base, String unit) {

    private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*[(\\[]\\s*([^)\\]]{1,12}?)\\s*[)\\]]\\s*");
    private static final Pattern SUFFIXED = Pattern.compile("(.*?)[\\s_/]+([^\\s_/]{1,12})");

    private static final Set<String> TIMES = Set.of("t", "time", "elapsed", "timestamp", "elapsed time", "");

    /** Decimal exponent of the unit of time in nanoseconds. */
    private static final Map<String, Integer> TIME_UNITS = Map.ofEntries(
            Map.entry("s", 9),
            Map.entry("sec", 9),
            Map.entry("secs", 9),
            Map.entry("second", 9),
            Map.entry("seconds", 9),
            Map.entry("ms", 6),
            Map.entry("msec", 6),
            Map.entry("milli", 6),
            Map.entry("millis", 6),
            Map.entry("millisecond", 6),
            Map.entry("milliseconds", 6),
            Map.entry("us", 3),
            Map.entry("\u00b5s", 3),
            Map.entry("\u03bcs", 3),
            Map.entry("usec", 3),
            Map.entry("micros", 3),
            Map.entry("microseconds", 3),
            Map.entry("ns", 0),
            Map.entry("nanos", 0),
            Map.entry("nanoseconds", 0));

    private static final Map<String, Measurand> MEASURANDS = Map.ofEntries(
            Map.entry("v", new Measurand("voltage", "V")),
            Map.entry("volt", new Measurand("voltage", "V")),
            Map.entry("volts", new Measurand("voltage", "V")),
            Map.entry("mv", new Measurand("voltage", "mV")),
            Map.entry("millivolts", new Measurand("voltage", "mV")),
            Map.entry("uv", new Measurand("voltage", "\u00b5V")),
            Map.entry("\u00b5v", new Measurand("voltage", "\u00b5V")),
            Map.entry("\u03bcv", new Measurand("voltage", "\u00b5V")),
            Map.entry("microvolts", new Measurand("voltage", "\u00b5V")),
            Map.entry("a", new Measurand("current", "A")),
            Map.entry("amps", new Measurand("current", "A")),
            Map.entry("amperes", new Measurand("current", "A")),
            Map.entry("ma", new Measurand("current", "mA")),
            Map.entry("milliamps", new Measurand("current", "mA")),
            Map.entry("ua", new Measurand("current", "\u00b5A")),
            Map.entry("\u00b5a", new Measurand("current", "\u00b5A")),
            Map.entry("microamps", new Measurand("current", "\u00b5A")),
            Map.entry("w", new Measurand("power", "W")),
            Map.entry("watts", new Measurand("power", "W")),
            Map.entry("mw", new Measurand("power", "mW")),
            Map.entry("milliwatts", new Measurand("power", "mW")),
            Map.entry("db", new Measurand("level", "dB")),
            Map.entry("dbm", new Measurand("level", "dBm")),
            Map.entry("dbu", new Measurand("level", "dBu")),
            Map.entry("dbv", new Measurand("level", "dBV")),
            Map.entry("dbfs", new Measurand("level", "dBFS")),
            Map.entry("counts", new Measurand("reading", "counts")));

    private static final Set<String> PLAIN = Set.of("", "value", "reading", "y");

    static ColumnName of(String text) {
        String name = text.strip();
        for (Pattern pattern : new Pattern[] {BRACKETED, SUFFIXED}) {
            Matcher matcher = pattern.matcher(name);
            if (matcher.matches() && (pattern == BRACKETED || isUnit(matcher.group(2)))) {
                return new ColumnName(lower(matcher.group(1)), matcher.group(2));
            }
        }
        return isUnit(name) ? new ColumnName("", name) : new ColumnName(lower(name), "");
    }

    /** Decimal exponent of its unit in nanoseconds, if it is a column of times; seconds where it names no unit. */
    OptionalInt timeExponent() {
        if (!TIMES.contains(base) || (base.isEmpty() && unit.isEmpty())) {
            return OptionalInt.empty();
        }
        Integer exponent = TIME_UNITS.get(unit.isEmpty() ? "s" : lower(unit));
        return exponent == null ? OptionalInt.empty() : OptionalInt.of(exponent);
    }

    /** What a column of readings with this name measures. */
    Measurand measurand() {
        Measurand known = MEASURANDS.getOrDefault(lower(unit), new Measurand("reading", unit));
        return PLAIN.contains(base) ? known : new Measurand(base.replace('_', ' '), known.unit());
    }

    private static boolean isUnit(String word) {
        return TIME_UNITS.containsKey(lower(word)) || MEASURANDS.containsKey(lower(word));
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
