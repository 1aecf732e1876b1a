package org.slugpeak.cli.check;

import java.util.Locale;

/** A line of the table that {@code check} prints. */
final class NamedLine {

    private NamedLine() {}

    static String of(String name, String value) {
        return String.format(Locale.ROOT, "%-17s %s", name, value);
    }
}
