package org.slugpeak.core.peak.grammar;

/** Numbers as short as they can be. */
final class Words {

    private Words() {}

    static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String volts(double value) {
        return number(value) + " V";
    }

    static String seconds(double value) {
        return number(value) + " s";
    }
}
