package org.slugpeak.core.progress;

import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.TwoPeaks;

/**
 * How far the work on one step of a plan has got. Whatever happens is answered with the phase that comes of it; what says nothing to a
 * phase leaves it as it is. One thread at a time.
 */
sealed interface Phase
        permits AtAdjuster, Settling, Ending, Resuming, Undamping, Checking, Halving, Halving.Clamping, Over {

    /** A trusted reading; the job has seen it already. */
    default Phase reading(ReadingTaken it) {
        return this;
    }

    /** The finder has said to turn back, or to stop. */
    default Phase verdict() {
        return this;
    }

    /** The reading has stayed at the best. */
    default Phase held() {
        return this;
    }

    /** Two maxima in one travel. */
    default Phase twoPeaks(TwoPeaks it) {
        return this;
    }

    /** A travel without a maximum. */
    default Phase noPeak(NoPeakReason reason) {
        return this;
    }

    /** A session with this plan begins. */
    default Phase begun() {
        return this;
    }

    /** An adjuster was begun or ended: from here on the log knows of it. */
    default Phase adjuster(Adjuster it) {
        return this;
    }

    /** The end of the adjuster, which the log knows of next, leads back. */
    default Phase wentBack() {
        return this;
    }

    /** A check is over. */
    default Phase checkOver() {
        return this;
    }

    /** The reading does not follow the generator. */
    default Phase flattened() {
        return this;
    }

    /** The user's key: it is set, it is done, it is this one. */
    default Phase next() {
        return this;
    }

    /** The user's key: leave it. */
    default Phase skip() {
        return this;
    }

    /** The user's key: one step back. */
    default Phase back() {
        return this;
    }
}
