package org.slugpeak.cli;

import java.util.OptionalDouble;
import org.slugpeak.bridge.file.CsvOptions;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How to understand what a source sends. */
final class SourceOptions {

    private static final double FASTEST_PER_SECOND = 1e6;

    @Option(
            names = "--decimal-comma",
            description = "CSV and standard input: numbers are written 1,25 and columns are separated by semicolons.")
    private boolean decimalComma;

    @Option(
            names = "--rate",
            paramLabel = "READINGS/S",
            description = "CSV and standard input without a time column: how many readings a second.")
    private Double rate = Double.NaN;

    /** What was said about text with readings. */
    CsvOptions csv() {
        if (rate.isNaN()) {
            return new CsvOptions(decimalComma, OptionalDouble.empty());
        }
        if (!(rate > 0 && rate <= FASTEST_PER_SECOND)) {
            throw new TypeConversionException(
                    "--rate takes more than 0 and at most 1000000 readings a second, not " + rate);
        }
        return new CsvOptions(decimalComma, OptionalDouble.of(rate));
    }
}
