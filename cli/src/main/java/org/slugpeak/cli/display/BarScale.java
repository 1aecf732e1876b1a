package org.slugpeak.cli.display;

/**
 * Where a distance stands on the bar: the same scale at all times, fine near the mark and coarse far from it. Stateless.
 */
final class BarScale {

    /** The bar is empty from here on, dB. */
    static final double SPAN_DB = 24;

    /** Distances below this are spread out, those above are drawn together, dB. */
    private static final double KNEE_DB = 0.5;

    /** The same for a zero, as a fraction of the largest swing. */
    private static final double KNEE_OF_SWING = 0.02;

    private BarScale() {}

    /** How much of the bar is filled: 1 at the mark, 0 at {@link #SPAN_DB} and beyond. */
    static double filled(double distanceDb) {
        if (Double.isNaN(distanceDb)) {
            return 0;
        }
        double near = Math.log1p(distanceDb / KNEE_DB) / Math.log1p(SPAN_DB / KNEE_DB);
        return Math.max(0, 1 - near);
    }

    /** How far a zero is off, with its sign: 0 at zero, 1 or -1 at the largest swing. */
    static double deflection(double value, double swing) {
        if (Double.isNaN(value) || swing <= 0) {
            return 0;
        }
        double size = Math.log1p(Math.abs(value) / swing / KNEE_OF_SWING) / Math.log1p(1 / KNEE_OF_SWING);
        return Math.copySign(Math.min(1, size), value);
    }
}
