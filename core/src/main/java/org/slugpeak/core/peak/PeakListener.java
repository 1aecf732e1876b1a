package org.slugpeak.core.peak;

/**
 * Hears what a {@link PeakFinder} finds. Every method is called from within {@link PeakFinder#accept}, in the thread that
 * called it, before it returns. Values are as read (with their sign), times are those of readings, decibels are never
 * negative and say how far the reading is on the wrong side of the best; NaN where decibels have no meaning
 * ({@link Seek#ZERO}).
 */
public interface PeakListener {

    /**
     * The reading has passed its maximum: turn back.
     *
     * @param tNanos time of the reading that decided it
     * @param best the best value, in the unit of the readings
     * @param bestAtNanos when the best was reached
     * @param dropDb how far the reading has fallen since
     */
    void passed(long tNanos, double best, long bestAtNanos, double dropDb);

    /**
     * After a pass the reading is back at the best: stop turning.
     *
     * @param tNanos time of the reading that decided it
     * @param value the smoothed reading, in the unit of the readings
     * @param lossDb what is still missing to the best
     */
    void returned(long tNanos, double value, double lossDb);

    /**
     * The reading has stayed at the best for the dwell time: record the adjuster.
     *
     * @param tNanos time of the reading that decided it
     * @param value the smoothed reading, in the unit of the readings
     * @param lossDb what is still missing to the best
     */
    void held(long tNanos, double value, double lossDb);

    /**
     * Two maxima were seen in one travel.
     *
     * @param tNanos time of the reading that decided it
     * @param first value at the first maximum, in the unit of the readings
     * @param second value at the second
     * @param dipDb depth of the dip between them, below the lower of the two
     */
    void twoPeaks(long tNanos, double first, double second, double dipDb);

    /**
     * A travel ended without a maximum.
     *
     * @param tNanos time of the reading that decided it
     * @param reason why
     */
    void noPeak(long tNanos, NoPeakReason reason);

    /**
     * Something the user should know that is no verdict.
     *
     * @param tNanos time of the reading that decided it
     * @param hint what
     * @param amount in the unit that the {@link Hint} names
     */
    void hint(long tNanos, Hint hint, double amount);
}
