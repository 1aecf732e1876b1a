package org.slugpeak.cli.quantity;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * From one frequency to another, Hz. Immutable; any thread may use it.
 *
 * @param lowHz where it begins
 * @param highHz where it ends, above
 */
public record FrequencySpan(double lowHz, double highHz) {

    /**
     * Frequencies at equal steps; both ends belong to them, the last step may be shorter.
     *
     * @param stepHz distance, Hz, positive
     * @return ascending
     */
    public List<Double> steps(double stepHz) {
        List<Double> steps = new ArrayList<>();
        long whole = (long) Math.floor((highHz - lowHz) / stepHz + 1e-9);
        for (long i = 0; i <= whole; i++) {
            steps.add(lowHz + i * stepHz);
        }
        if (highHz - steps.get(steps.size() - 1) > 1e-6 * stepHz) {
            steps.add(highHz);
        }
        return steps;
    }

    /** Reads {@code 440..470}. */
    public static final class Converter implements ITypeConverter<FrequencySpan> {

        @Override
        public FrequencySpan convert(String text) {
            int dots = text.indexOf("..");
            if (dots < 1) {
                throw new TypeConversionException(
                        "'" + text + "' is no span: give two frequencies, for example 440..470");
            }
            Frequency frequency = new Frequency();
            double low = frequency.convert(text.substring(0, dots));
            double high = frequency.convert(text.substring(dots + 2));
            if (low >= high) {
                throw new TypeConversionException("'" + text + "': give the lower frequency first");
            }
            return new FrequencySpan(low, high);
        }
    }
}
