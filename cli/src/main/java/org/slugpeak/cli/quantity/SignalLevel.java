package org.slugpeak.cli.quantity;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.slugpeak.core.generator.LevelUnit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A level of a generator with its unit, since a bare volt may be one at open terminals or half of it; the value is in volts EMF. */
public final class SignalLevel implements ITypeConverter<Double> {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(\\S.*?)\\s*");

    /** Called by the command-line library. */
    public SignalLevel() {}

    @Override
    public Double convert(String text) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        Optional<LevelUnit> unit = matcher.matches() ? LevelUnit.ofWord(matcher.group(2)) : Optional.empty();
        double emfVolts = unit.map(it -> it.toEmfVolts(Double.parseDouble(matcher.group(1))))
                .orElse(Double.NaN);
        if (!(emfVolts > 0 && Double.isFinite(emfVolts))) {
            String units =
                    Arrays.stream(LevelUnit.values()).map(LevelUnit::word).collect(Collectors.joining(", "));
            throw new TypeConversionException("'" + text + "' is no level: give a number with its unit, for example"
                    + " \"100 uV EMF\" or -70dBm (" + units + ")");
        }
        return emfVolts;
    }
}
