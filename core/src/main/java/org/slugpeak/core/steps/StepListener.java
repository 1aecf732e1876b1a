package org.slugpeak.core.steps;

import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;

/**
 * Hears what a {@link StepFinder} finds, from within {@link StepFinder#accept}, in the thread that called it. Values are as
 * read; decibels are not negative, NaN for a zero.
 */
public interface StepListener {

    /**
     * What is sought was passed: turn back.
     *
     * @param tNanos time of the reading that decided it
     * @param best the best value read, in the unit of the readings
     * @param bestAtNanos when it was read
     * @param dropDb how far the last reading is from it
     * @param back where the top lies
     */
    void passed(long tNanos, double best, long bestAtNanos, double dropDb, StepsBack back);

    /**
     * After a pass the hand went on, away from what is sought.
     *
     * @param tNanos time of the reading that decided it
     * @param back where the top lies, from here
     */
    void further(long tNanos, StepsBack back);

    /**
     * After a pass the value is back at the best; as it has settled, the adjuster can be recorded.
     *
     * @param tNanos time of the reading that decided it
     * @param value as read, in the unit of the readings
     * @param lossDb what is missing to the top
     */
    void returned(long tNanos, double value, double lossDb);

    /**
     * A pass is taken back, or a null was no zero.
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
