package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;

/** A short, printable piece of foreign text for a message of one line. */
final class Excerpt {

    private static final int LONGEST = 40;

    private Excerpt() {}

    static String of(byte[] bytes, int from, int to) {
        int end = Math.min(to, from + 4 * LONGEST);
        return of(new String(bytes, from, end - from, StandardCharsets.UTF_8));
    }

    static String of(String text) {
        StringBuilder out = new StringBuilder();
        text.strip()
                .codePoints()
                .limit(LONGEST)
                .map(letter -> isPlain(letter) ? letter : '?')
                .forEach(out::appendCodePoint);
        return text.strip().codePointCount(0, text.strip().length()) > LONGEST
                ? out.append("...").toString()
                : out.toString();
    }

    private static boolean isPlain(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
