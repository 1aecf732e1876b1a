package org.slugpeak.bridge.text;

import java.util.function.IntPredicate;

/**
 * Text that may come from an instrument, a log, a plan or another program, made harmless for whoever shows it: a character that a
 * terminal obeys instead of showing (ECMA-48 control functions of C0 and C1), that turns the order of what follows (Unicode
 * Standard Annex 9), that ends a line, or that is no whole character becomes a question mark. Joiners, which Persian and Hindi are
 * written with, stay. Stateless.
 */
public final class SafeText {

    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;

    private SafeText() {}

    /**
     * One line.
     *
     * @param text any
     * @return the text, fit for one line
     */
    public static String line(String text) {
        return replaced(text, SafeText::isSafe);
    }

    /**
     * Several lines: line feeds and tabs stay.
     *
     * @param text any
     * @return the text, fit to be shown
     */
    public static String lines(String text) {
        return replaced(text, each -> each == '\n' || each == '\t' || isSafe(each));
    }

    /**
     * Whether a character can be shown as it is.
     *
     * @param codePoint of Unicode
     * @return false for what {@link #line} replaces
     */
    public static boolean isSafe(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                false;
            case Character.FORMAT -> codePoint == NON_JOINER || codePoint == JOINER;
            default -> true;
        };
    }

    private static String replaced(String text, IntPredicate stays) {
        if (text.codePoints().allMatch(stays)) {
            return text;
        }
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(each -> safe.appendCodePoint(stays.test(each) ? each : '?'));
        return safe.toString();
    }
}
