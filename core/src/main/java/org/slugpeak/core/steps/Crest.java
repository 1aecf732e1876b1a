package org.slugpeak.core.steps;

/**
 * The readings about a top: the highest, as often as it was read in a row, and its neighbours. Sizes without sign. Immutable.
 *
 * @param before the reading before the top
 * @param top the reading at the top
 * @param tops how many equal readings stand there; at least 1
 * @param after the reading after them
 */
record Crest(double before, double top, int tops, double after) {

    /** From the middle of the top to either end of it, steps. */
    double halfWidth() {
        return (tops - 1) / 2.0;
    }

    /** The same on a scale 2^exponent times as fine, which rounds nothing. */
    Crest scaled(int exponent) {
        return new Crest(Math.scalb(before, exponent), Math.scalb(top, exponent), tops, Math.scalb(after, exponent));
    }

    /** One of the eight corners that rounding by half the last digit may have come from. */
    Crest corner(int index, double half) {
        return new Crest(
                before + sign(index, 1) * half, top + sign(index, 2) * half, tops, after + sign(index, 4) * half);
    }

    private static int sign(int index, int bit) {
        return (index & bit) == 0 ? -1 : 1;
    }

    static final int CORNERS = 8;
}
