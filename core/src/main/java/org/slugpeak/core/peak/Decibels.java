package org.slugpeak.core.peak;

/** Ratios of voltages in decibels, kept finite. */
final class Decibels {

    /** Deeper than any reading goes; stands for a ratio of zero. */
    private static final double DEEPEST_DB = 400;

    private Decibels() {}

    /** How far a ratio is from one, whichever way. */
    static double apart(double a, double b) {
        double db = Math.abs(20 * Math.log10(Math.abs(a / b)));
        return db <= DEEPEST_DB ? db : Double.isNaN(db) ? 0 : DEEPEST_DB;
    }

    /** The part of a level by which it changes when it drops by so many decibels. */
    static double part(double db) {
        return 1 - Math.pow(10, -db / 20);
    }
}
