package org.slugpeak.cli.quantity;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A dial mark and what is truly there, as typed: {@code DIAL:TRUE}. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param trueHz what it is, Hz
 */
public record DialPoint(double dialHz, double trueHz) {

    /** Reads {@code 400:397.2}. */
    public static final class Converter implements ITypeConverter<DialPoint> {

        /** Called by the command-line library. */
        public Converter() {}

        @Override
        public DialPoint convert(String text) {
            String[] parts = text.split(":", -1);
            if (parts.length != 2) {
                throw new TypeConversionException(
                        "'" + text + "' is no point: give dial and true frequency, for example 400:397.2");
            }
            Frequency frequency = new Frequency();
            return new DialPoint(frequency.convert(parts[0]), frequency.convert(parts[1]));
        }
    }
}
