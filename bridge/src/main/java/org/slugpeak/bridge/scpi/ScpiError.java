package org.slugpeak.bridge.scpi;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entry of a meter's error queue, as {@code SYSTem:ERRor?} gives it: a whole number, a comma and a text in quotes
 * (SCPI-1999 volume 2 section 21.8). Some meters write the sign of zero. Immutable; any thread may use it.
 *
 * @param number 0 for none, negative for the standard's own, positive for the maker's
 * @param text without its quotes
 */
record ScpiError(int number, String text) {

    private static final Pattern FORM = Pattern.compile("\\s*([+-]?\\d{1,6})\\s*,\\s*\"(.*)\"?\\s*");

    static Optional<ScpiError> parse(String answer) {
        Matcher form = FORM.matcher(answer);
        if (!form.matches()) {
            return Optional.empty();
        }
        String text = form.group(2);
        String plain = text.endsWith("\"") ? text.substring(0, text.length() - 1) : text;
        return Optional.of(new ScpiError(Integer.parseInt(form.group(1)), plain));
    }

    boolean isNone() {
        return number == 0;
    }

    @Override
    public String toString() {
        return number + " " + text;
    }
}
