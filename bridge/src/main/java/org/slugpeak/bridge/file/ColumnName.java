package org.slugpeak.bridge.file;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

    /** Time in the languages of the loggers' makers and their customers. */
    private static final Set<String> TIMES = Set.of(
            "t",
            "time",
            "elapsed",
            "timestamp",
            "elapsed time",
            "relative time",
            "",
            "zeit",
            "uhrzeit",
            "zeitstempel",
            "temps",
            "heure",
            "tiempo",
            "hora",
            "tempo",
            "ora",
            "tijd",
            "tid",
            "klokkeslett",
            "aika",
            "\u010das",
            "czas",
            "id\u0151",
            "zaman",
            "\u0432\u0440\u0435\u043c\u044f",
            "\u03c7\u03c1\u03cc\u03bd\u03bf\u03c2",
            "\u65f6\u95f4",
            "\u6642\u9593");

    private static final Set<String> DATES = Set.of(
            "date",
            "datetime",
            "date time",
            "date/time",
            "datum",
            "fecha",
            "data",
            "dato",
            "day",
            "days",
            "dag",
            "tag");

    private static final Set<String> COUNTERS = Set.of(
            "no",
            "no.",
            "nr",
            "nr.",
            "n",
            "#",
            "index",
            "count",
            "counter",
            "sample",
            "samples",
            "record",
            "row",
            "line",
            "id",
            "step",
            "scan",
            "num",
            "number",
            "point",
            "lfd. nr.");

    private static final Set<String> NEVER_TIMES = Set.of(
            "f",
            "freq",
            "freq.",
            "frequency",
            "frequenz",
            "frequence",
            "fr\u00e9quence",
            "frecuencia",
            "frequenza",
            "frekvens",
            "turns",
            "angle",
            "position",
            "range",
            "value",
            "reading",
            "channel");

    private static final Set<String> DAY_UNITS = Set.of("d", "day", "days");

    /** Decimal exponent of the unit of time in nanoseconds. */
    private static final Map<String, Integer> TIME_UNITS = Map.ofEntries(
            Map.entry("s", 9),
            Map.entry("sec", 9),
            Map.entry("secs", 9),
            Map.entry("second", 9),
            Map.entry("seconds", 9),
            Map.entry("sekunden", 9),
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

    /** Whether it names a date, or days. */
    boolean isDate() {
        return DATES.contains(base) || (TIMES.contains(base) && DAY_UNITS.contains(lower(unit)));
    }

    /** Whether a column of this name, if it rises steadily, may be one of times. */
    boolean mayBeTime() {
        return unit.isEmpty() && !COUNTERS.contains(base) && !NEVER_TIMES.contains(base);
    }

    /** Whether it only counts the lines. */
    boolean isCounter() {
        return unit.isEmpty() && COUNTERS.contains(base);
    }

    /** The unit of a column of readings with this name, where it names one that is known. */
    Optional<ReadingUnit> readingUnit() {
        return ReadingUnit.of(unit);
    }

    /** What a column of readings with this name measures. */
    Measurand measurand() {
        Measurand known = readingUnit().map(ReadingUnit::measurand).orElse(new Measurand("reading", unit));
        return PLAIN.contains(base) ? known : new Measurand(base.replace('_', ' '), known.unit());
    }

    private static boolean isUnit(String word) {
        return TIME_UNITS.containsKey(lower(word)) || ReadingUnit.of(word).isPresent();
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
