package org.slugpeak.core.decibel;

/**
 * Ratios of levels as decibels, and back.
 *
 * <p><b>Definition.</b> Of a ratio r of amplitudes (voltages, sound pressures, readings of a meter that is linear in them)
 * 20 log10 r, of a ratio of powers 10 log10 r.
 *
 * <p><b>At the edges.</b> A ratio of 0 is minus infinity, an infinite one plus infinity, a negative one NaN, since it has no
 * level; NaN stays NaN. Back again minus infinity is 0. Only {@link #apart} keeps to finite numbers.
 *
 * <p><b>Why this way.</b> The plain expressions, so that a figure in an old log is found again to the last bit.
 *
 * <p>Stateless, allocates nothing; any thread may use it.
 *
 * <p>Source: ISO 80000-3:2006, decibel as a unit of the level of a field quantity and of a power quantity, from memory.
 */
public final class Decibels {

    /** Deeper than any reading goes; stands for a ratio of zero where a finite number is wanted. */
    private static final double DEEPEST_DB = 400;

    private Decibels() {}

    /**
     * The level of a ratio of amplitudes.
     *
     * @param ratio of two amplitudes, 0 or more
     * @return dB; minus infinity for 0, NaN for a negative ratio and for NaN
     */
    public static double of(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /**
     * The level of a ratio of powers.
     *
     * @param ratio of two powers, 0 or more
     * @return dB; minus infinity for 0, NaN for a negative ratio and for NaN
     */
    public static double ofPower(double ratio) {
        return 10 * Math.log10(ratio);
    }

    /**
     * The ratio of amplitudes that makes so many decibels: {@link #of} backwards.
     *
     * @param levelDb dB, any
     * @return ratio, 0 or more; NaN for NaN
     */
    public static double ratio(double levelDb) {
        return Math.pow(10, levelDb / 20);
    }

    /**
     * The part of an amplitude that is gone when it drops by so many decibels.
     *
     * @param dropDb dB, not negative
     * @return ratio of what is gone to what was there, 0 to 1
     */
    public static double lost(double dropDb) {
        return 1 - ratio(-dropDb);
    }

    /**
     * How far two amplitudes are from each other, whichever is the greater; signs do not count.
     *
     * @param one an amplitude, in the unit of the other
     * @param other an amplitude, in the unit of the one
     * @return dB, 0 to {@value #DEEPEST_DB}, which stands for a ratio beyond; 0 where there is no ratio, as of two zeros
     */
    public static double apart(double one, double other) {
        double apartDb = Math.abs(of(Math.abs(one / other)));
        return apartDb <= DEEPEST_DB ? apartDb : Double.isNaN(apartDb) ? 0 : DEEPEST_DB;
    }
}
