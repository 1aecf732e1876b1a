package org.slugpeak.cli.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a positive number with or without one of the units of a kind, and gives it in the SI unit. */
abstract class UnitConverter implements ITypeConverter<Double> {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*([a-zA-Z\u00b5\u03a9]*)\\s*");

    private final String kind;
    private final String bareUnit;
    private final Map<String, Double> factors;

    UnitConverter(String kind, String bareUnit, Map<String, Double> factors) {
        this.kind = kind;
        this.bareUnit = bareUnit;
        this.factors = factors;
    }

    @Override
    public Double convert(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        if (!matcher.matches()) {
            throw wrong(text, "is no " + kind);
        }
        double value = Double.parseDouble(matcher.group(1)) * factor(text, matcher.group(2));
        if (!(value > 0) || !Double.isFinite(value)) {
            throw wrong(text, "is not above zero");
        }
        return value;
    }

    private double factor(String text, String typed) {
        String unit = typed.isEmpty() ? bareUnit : typed.replace('\u00b5', 'u').replace("\u03a9", "ohm");
        return factors.entrySet().stream()
                .filter(each -> each.getKey().equalsIgnoreCase(unit))
                .findFirst()
                .orElseThrow(() -> wrong(text, "has a unit that is no unit of " + kind))
                .getValue();
    }

    private TypeConversionException wrong(String text, String problem) {
        String units = String.join(", ", factors.keySet().stream().sorted().toList());
        return new TypeConversionException(
                "'" + text + "' " + problem + ": give a number in " + bareUnit + ", or with its unit (" + units + ")");
    }
}
