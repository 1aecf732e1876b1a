package org.slugpeak.core.progress;

import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.TwoPeaks;

/**
 * How far the work on one step of a plan has got. Whatever happens is answered with the phase that comes of it; what says nothing to a
 * phase leaves it as it is. One thread at a time.
 */
sealed interface PlanPhase
        permits AtAdjuster, Settling, Ending, Resuming, AwaitingHand, Raising, Checking, Halving, Levelling, Over {

    /** A trusted reading; the job has seen it already. */
    default PlanPhase reading(ReadingTaken it) {
        return this;
    }

    /** The finder has said to turn back, or to stop. */
    default PlanPhase verdict() {
        return this;
    }

    /** The reading has stayed at the best. */
    default PlanPhase held() {
        return this;
    }

    /** Two maxima in one travel. */
    default PlanPhase twoPeaks(TwoPeaks it) {
        return this;
    }

    /** A travel without a maximum. */
    default PlanPhase noPeak(NoPeakReason reason) {
        return this;
    }

    /** A session with this plan begins. */
    default PlanPhase begun() {
        return this;
    }

    /** An adjuster was begun or ended: from here on the log knows of it. */
    default PlanPhase adjuster(Adjuster it) {
        return this;
    }

    /** The end of the adjuster, which the log knows of next, leads back. */
    default PlanPhase wentBack() {
        return this;
    }

    /** Whether the generator holds the reading in its window meanwhile. */
    default boolean isLevelled() {
        return false;
    }

    /** The generator is back, and nobody knows what it did meanwhile. */
    default PlanPhase generatorBack() {
        return this;
    }

    /** Nothing changed when it should, so that the check is dropped; next it is over. */
    default PlanPhase checkDropped() {
        return this;
    }

    /** A check is over. */
    default PlanPhase checkOver() {
        return this;
    }

    /** The reading follows the generator by so little, in decibels of one over decibels of the other. */
    default PlanPhase flattened(double slope) {
        return this;
    }

    /** The user's key: it is set, it is done, it is this one. */
    default PlanPhase next() {
        return this;
    }

    /** The user's key: leave it. */
    default PlanPhase skip() {
        return this;
    }

    /** The user's key: one step back. */
    default PlanPhase back() {
        return this;
    }
}
