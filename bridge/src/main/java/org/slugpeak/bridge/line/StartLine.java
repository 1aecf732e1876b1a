package org.slugpeak.bridge.line;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.MeterField;
import org.slugpeak.core.reading.Condition;

/**
 * What an instrument said of itself. Immutable; any thread may use it.
 *
 * @param name of the instrument
 * @param unit base unit of a reading; empty for a plain number
 * @param scale from counts to the base unit, with the ends of the scale
 * @param restarted whether it has just been reset
 */
record StartLine(String name, String unit, Scale scale, boolean restarted) {

    /** What came where a start line was expected. */
    record Outcome(Optional<StartLine> line, String problem, boolean otherVersion) {}

    static Outcome read(StartFormat format, String payload) {
        String[] words = payload.substring(format.startsWith().length()).strip().split(" ", -1);
        if (format.version().isPresent() && !words[0].equals(format.version().get())) {
            return new Outcome(
                    Optional.empty(),
                    "speaks version " + words[0] + " of '" + format.startsWith() + "', and only version "
                            + format.version().get() + " is understood: use a newer slugpeak or an older firmware",
                    true);
        }
        Map<String, String> values = values(words);
        Optional<MeterField> unit = unit(values.getOrDefault(format.unitKey(), ""));
        OptionalDouble scale = number(values, format.scaleKey());
        OptionalDouble low = number(values, format.lowKey());
        OptionalDouble high = number(values, format.highKey());
        if (unit.isEmpty() || scale.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return new Outcome(Optional.empty(), "start line without unit, scale, low or high: " + payload, false);
        }
        Scale counts = new Scale(
                scale.getAsDouble() * unit.get().value(),
                0,
                high,
                low.getAsDouble() < 0 ? low : OptionalDouble.empty());
        String name = values.getOrDefault(format.nameKey(), "a board without a name");
        boolean restarted =
                format.restart().filter(Arrays.asList(words)::contains).isPresent();
        return new Outcome(Optional.of(new StartLine(name, unit.get().unit(), counts, restarted)), "", false);
    }

    private static Map<String, String> values(String[] words) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals > 0) {
                values.put(word.substring(0, equals), word.substring(equals + 1));
            }
        }
        return values;
    }

    private static Optional<MeterField> unit(String written) {
        if (written.isEmpty()) {
            return Optional.empty();
        }
        return written.equals("1") ? MeterField.parse("1") : MeterField.parse("1 " + written);
    }

    private static OptionalDouble number(Map<String, String> values, String key) {
        Optional<MeterField> field = MeterField.parse(values.getOrDefault(key, ""));
        return field.isPresent() && field.get().condition() == Condition.OK
                ? OptionalDouble.of(field.get().value())
                : OptionalDouble.empty();
    }
}
