package org.slugpeak.cli.quantity;

import picocli.CommandLine.TypeConversionException;

/**
 * A dial mark and what is truly there, as typed: {@code DIAL:TRUE}. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param trueHz what it is, Hz
 */
public record DialPoint(double dialHz, double trueHz) {

    /**
     * Reads {@code 400:397.2}.
     *
     * @param text as typed
     * @param decimalComma whether numbers are written {@code 397,2}, whatever else they might mean
     * @return the point
     * @throws TypeConversionException where it is no point, or may mean two
     */
    public static DialPoint parse(String text, boolean decimalComma) {
        String[] parts = text.split(":", -1);
        if (parts.length != 2) {
            throw new TypeConversionException(
                    "'" + text + "' is no point: give dial and true frequency, for example 400:397.2");
        }
        return new DialPoint(hz(parts[0], decimalComma), hz(parts[1], decimalComma));
    }

    private static double hz(String text, boolean decimalComma) {
        return new Frequency().convert(DecimalComma.withPoint(text, decimalComma));
    }
}
