package org.slugpeak.bridge.source;

/** Text from an instrument that is fit to be shown: a damaged line must not play with the user's terminal. Stateless. */
final class Printable {

    private static final int FIRST = 0x20;
    private static final int LAST_PLAIN = 0x7E;
    private static final int FIRST_LETTER_BEYOND = 0xA0;

    private Printable() {}

    static String of(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.chars().forEach(each -> shown.append(isSafe(each) ? (char) each : '?'));
        return shown.toString();
    }

    private static boolean isSafe(int each) {
        return (each >= FIRST && each <= LAST_PLAIN) || each >= FIRST_LETTER_BEYOND;
    }
}
