package org.slugpeak.cli.quantity;

import java.util.regex.Pattern;
import picocli.CommandLine.TypeConversionException;

/**
 * A number on the command line that may be written with a decimal comma: read as one where it can be nothing else, or where the
 * user says so; one that may mean two numbers is refused with both. Stateless.
 */
final class DecimalComma {

    /** One to three digits and a comma before exactly three more: a decimal comma, or thousands. */
    private static final Pattern TWO_MEANINGS = Pattern.compile("\\s*[+-]?[1-9]\\d{0,2},\\d{3}(?!\\d).*");

    private static final Pattern WITH_COMMA = Pattern.compile("[^,.]*\\d,\\d[^,.]*");

    private DecimalComma() {}

    /** The same with a point, fit for a {@link UnitConverter}. */
    static String withPoint(String text, boolean decimalComma) {
        if (decimalComma && text.contains(".")) {
            throw new TypeConversionException("'" + text
                    + "' has a point, but --decimal-comma says that numbers are written 1,25: leave one out");
        }
        if (!WITH_COMMA.matcher(text).matches()) {
            return text;
        }
        if (!decimalComma && TWO_MEANINGS.matcher(text).matches()) {
            throw new TypeConversionException("'" + text + "' may be " + text.replace(",", "") + ", or "
                    + text.replace(',', '.') + " with a decimal comma: write it without the comma for the first, or use"
                    + " --decimal-comma for the second");
        }
        return text.replace(',', '.');
    }
}
