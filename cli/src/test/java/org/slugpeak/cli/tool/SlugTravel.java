package org.slugpeak.cli.tool;

import java.util.Locale;

/**
 * A slug turned from below its peak to 1 dB past it and back onto it, read 50 times a second without noise: V = 1 /
 * sqrt(1 + x^2), x in half-widths.
 */
final class SlugTravel {

    private static final double READINGS_PER_SECOND = 50;
    private static final double HALF_WIDTHS_PER_SECOND = 0.25;

    private SlugTravel() {}

    static String thereAndBack() {
        StringBuilder text = new StringBuilder("seconds,volts\n");
        int row = 0;
        double x = -1.5;
        for (; x < 0.5; x += HALF_WIDTHS_PER_SECOND / READINGS_PER_SECOND) {
            append(text, row++, x);
        }
        for (; x > 0; x -= HALF_WIDTHS_PER_SECOND / READINGS_PER_SECOND) {
            append(text, row++, x);
        }
        for (int still = 0; still < 4 * READINGS_PER_SECOND; still++) {
            append(text, row++, 0);
        }
        return text.toString();
    }

    private static void append(StringBuilder text, int row, double x) {
        text.append(String.format(Locale.ROOT, "%.2f,%.5f%n", row / READINGS_PER_SECOND, 1 / Math.sqrt(1 + x * x)));
    }
}
