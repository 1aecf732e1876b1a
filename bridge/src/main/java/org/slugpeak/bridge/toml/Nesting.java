package org.slugpeak.bridge.toml;

import java.util.OptionalInt;

/**
 * How deep the brackets of a text go. The parser calls itself for each, and a text that goes deep enough would take the program
 * down. Strings and comments (TOML 1.0.0) do not count. One thread at a time.
 */
final class Nesting {

    /** Nothing that is written by hand goes deeper than four. */
    static final int DEEPEST = 64;

    private final String text;
    private int at;

    private Nesting(String text) {
        this.text = text;
    }

    /** Where it goes too deep; empty where it does not. */
    static OptionalInt lineTooDeep(String text) {
        return new Nesting(text).find();
    }

    private OptionalInt find() {
        int depth = 0;
        while (at < text.length()) {
            char each = text.charAt(at);
            switch (each) {
                case '[', '{' -> depth++;
                case ']', '}' -> depth = Math.max(0, depth - 1);
                case '#' -> skipTo("\n", false);
                case '"', '\'' -> skipString(each);
                default -> {}
            }
            if (depth > DEEPEST) {
                return OptionalInt.of(1
                        + (int) text.substring(0, at)
                                .chars()
                                .filter(c -> c == '\n')
                                .count());
            }
            at++;
        }
        return OptionalInt.empty();
    }

    private void skipString(char quote) {
        String three = String.valueOf(quote).repeat(3);
        boolean escapes = quote == '"';
        if (text.startsWith(three, at)) {
            at += 3;
            skipTo(three, escapes);
        } else {
            at++;
            skipTo(String.valueOf(quote), escapes);
        }
    }

    /** To the last letter of the end; a string of one line that is not closed ends with its line. */
    private void skipTo(String end, boolean escapes) {
        boolean oneLine = end.length() == 1;
        while (at < text.length() && !text.startsWith(end, at) && !(oneLine && text.charAt(at) == '\n')) {
            at += escapes && text.charAt(at) == '\\' ? 2 : 1;
        }
        at += end.length() - 1;
    }
}
