package org.slugpeak.bridge.frame;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Characters in a frame. Immutable.
 *
 * @param from index of the first
 * @param to index behind the last
 */
record TextField(int from, int to) {

    private static final Pattern FORM = Pattern.compile("(\\d{1,3})(?:-(\\d{1,3}))?");

    /** Reads {@code 2-8}; empty where it is no such place in a frame of that length. */
    static Optional<TextField> parse(String text, int length) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        int from = Integer.parseInt(form.group(1));
        int last = form.group(2) == null ? from : Integer.parseInt(form.group(2));
        return last < from || last >= length ? Optional.empty() : Optional.of(new TextField(from, last + 1));
    }

    /** What stands there without its blanks. */
    String of(byte[] frame) {
        return new String(frame, from, to - from, StandardCharsets.ISO_8859_1).replace(" ", "");
    }
}
