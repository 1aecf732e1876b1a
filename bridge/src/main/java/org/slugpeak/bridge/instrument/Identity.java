package org.slugpeak.bridge.instrument;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Who an instrument says it is. IEEE 488.2 section 10.14 asks for four fields: maker, model, serial number, firmware, with a 0 for
 * what is not known. Some are met that send three, or six, or repeat the question before the answer; whatever comes, the
 * instrument gets a name. Immutable; any thread may use it.
 *
 * @param name one line for the user, never empty
 */
public record Identity(String name) {

    private static final String ECHO = "*IDN";
    private static final int REGULAR_FIELDS = 4;

    /** As much as fits into a line of a screen. */
    private static final int LONGEST = 72;

    /**
     * Makes a name of an answer.
     *
     * @param answer to {@code *IDN?}, without its line end
     * @return the identity
     */
    public static Identity of(String answer) {
        String plain = answer.strip();
        if (plain.toUpperCase(Locale.ROOT).startsWith(ECHO)) {
            plain = plain.substring(ECHO.length()).replaceFirst("^\\?", "").strip();
        }
        List<String> fields = new ArrayList<>();
        for (String field : Arrays.asList(plain.split(",", -1))) {
            fields.add(field.strip());
        }
        String name = join(" ", fields.subList(0, Math.min(2, fields.size())));
        if (fields.size() == REGULAR_FIELDS && says(fields.get(REGULAR_FIELDS - 1))) {
            name = join(", firmware ", List.of(name, fields.get(REGULAR_FIELDS - 1)));
        }
        return new Identity(name.isEmpty() ? "an instrument without a name" : shortened(name));
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST ? name : name.substring(0, LONGEST) + "...";
    }

    private static String join(String between, List<String> parts) {
        return String.join(between, parts.stream().filter(Identity::says).toList());
    }

    private static boolean says(String field) {
        return !field.isEmpty() && !field.equals("0");
    }
}
