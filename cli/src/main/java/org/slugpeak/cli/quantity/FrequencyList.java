package org.slugpeak.cli.quantity;

import java.util.List;
import java.util.stream.Stream;

/** Frequencies in a list, as typed. Stateless; any thread may use it. */
public final class FrequencyList {

    private FrequencyList() {}

    /**
     * Reads {@code 455,460}, or {@code 455,5;460} where commas are decimal.
     *
     * @param typed lists
     * @param decimalComma whether numbers are written {@code 455,5}; then a semicolon is between them
     * @return Hz, in the order in which they were typed
     * @throws picocli.CommandLine.TypeConversionException where one is no frequency
     */
    public static List<Double> parse(List<String> typed, boolean decimalComma) {
        Frequency frequency = new Frequency();
        return typed.stream()
                .flatMap(text -> Stream.of(text.split(decimalComma ? ";" : ",")))
                .map(text -> decimalComma ? DecimalComma.withPoint(text, true) : text)
                .map(frequency::convert)
                .toList();
    }
}
