package org.slugpeak.core.peak;

/** Noise that is known beforehand: to and fro, by not quite the same each time, so that every even number of readings hardly has a mean. */
final class ToAndFro {

    private final double size;
    private int readings;

    /** @param size how far to either side, about */
    ToAndFro(double size) {
        this.size = size;
    }

    double next() {
        int pair = readings / 2;
        double side = readings % 2 == 0 ? 1 : -1;
        readings++;
        return side * size * (1 + 0.2 * Math.sin(pair));
    }
}
