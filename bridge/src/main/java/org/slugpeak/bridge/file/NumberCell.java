package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.bridge.decimal.Decimal;

/**
 * A number in a cell, with or without a unit behind it. Immutable.
 *
 * @param value as written
 * @param unit behind it
 */
record NumberCell(double value, Optional<ReadingUnit> unit) {

    private static final Pattern FORM =
            Pattern.compile("([+-]?[0-9.,]+(?:[eE][+-]?[0-9]{1,5})?)\\s*([\\p{L}\u00b5][\\p{L}\u00b5 ]{0,11})?");

    private static final char MINUS_SIGN = '\u2212';

    /** Reads a cell; empty where it is no number, or its unit is none of a reading. */
    static Optional<NumberCell> parse(String text, char point) {
        Matcher form = FORM.matcher(text.replace(MINUS_SIGN, '-').strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        Optional<String> written = Optional.ofNullable(form.group(2)).map(String::strip);
        Optional<ReadingUnit> unit = written.flatMap(ReadingUnit::of);
        byte[] digits = form.group(1).getBytes(StandardCharsets.US_ASCII);
        Decimal decimal = new Decimal(point);
        if (unit.isPresent() != written.isPresent() || !decimal.read(digits, 0, digits.length)) {
            return Optional.empty();
        }
        return Optional.of(new NumberCell(decimal.toDouble(), unit));
    }
}
