package org.slugpeak.bridge.line;

/** A line as it is shown to the user. Stateless. */
final class Quote {

    private static final int LONGEST = 40;

    private Quote() {}

    static String of(String text) {
        return "'" + (text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...") + "'";
    }
}
