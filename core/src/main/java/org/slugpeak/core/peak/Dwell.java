package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;

/**
 * What comes of a stay at the best.
 *
 * <p><b>Definition.</b> After the dwell, when nothing moves, the mean over {@value #OF_DWELL} of the stay may miss {@value #HELD_WITHIN_DB} dB and what
 * noise explains. Where noise explains much of that the verdict waits, until the loss with two sigma is within it, but not longer than
 * {@value #MOST_DWELLS} dwells. By then nothing may be missing at first, and {@value #EACH_TIME} sigma more each time in vain.
 *
 * <p><b>Drift.</b> What moves so slowly and evenly for the longest stay is no hand. If the best is missed by no more than such a drift has taken since it was
 * reached, the best is lowered by that, and it is said.
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Dwell {

    private static final double HELD_WITHIN_DB = 0.15;
    /** Where noise explains less than this part of that, the dwell is enough. */
    private static final double QUIET = 0.25;
    /** Where noise leaves that open the verdict waits, but not longer than so many dwells. */
    private static final double MOST_DWELLS = 1.75;
    /**
     * Then nothing may be missing at first, so that a lucky moment does not end the search; but so many sigma more each time that the hand
     * has stopped short: the more often in vain, the likelier the best itself is too high by chance.
     */
    private static final double EACH_TIME = 0.5;
    /** The mean over this part of the dwell counts: the hand comes to rest in the first quarter. */
    private static final double OF_DWELL = 0.75;
    /** A drift is measured over the longest means that fit twice into this. */
    private static final double DRIFT_SECONDS = 1.5;
    /** A warming set drifts by a decibel a minute or two; faster, it is a hand. */
    private static final double FASTEST_DRIFT = Decibels.lost(3) / 60;

    private static final double HELD_WITHIN = Decibels.lost(HELD_WITHIN_DB);
    private static final double SURELY = 2;
    private static final double DRIFT_SHOWS = 2;

    private final Sight sight;
    private final Best best;
    private final long dwellNanos;
    private final PeakListener listener;
    private int stoppedShort;
    private double loss;
    private long restsSinceNanos;
    private boolean saidRest;

    Dwell(Sight sight, Best best, long dwellNanos, PeakListener listener) {
        this.sight = sight;
        this.best = best;
        this.dwellNanos = dwellNanos;
        this.listener = listener;
    }

    void restart() {
        stoppedShort = 0;
    }

    /** What the last stay missed. */
    double loss() {
        return loss;
    }

    HuntGoal.Stay stay(long tNanos, long sinceNanos) {
        long dwelt = Elapsed.nanos(sinceNanos, tNanos);
        double seconds = OF_DWELL * 1e-9 * dwelt;
        boolean late = dwelt >= MOST_DWELLS * dwellNanos;
        if (dwelt < dwellNanos || (sight.slope.movesWithin(seconds) && !(late && isDrift()))) {
            return HuntGoal.Stay.WAITS;
        }
        loss = best.value() - sight.meanOver(seconds);
        double sigma = Sigma.ofDifference(sight.sigmaOver(seconds, best.value()), best.sigma());
        if (loss <= allowed(SURELY * sigma, late)) {
            return HuntGoal.Stay.HELD;
        }
        if (!late) {
            return HuntGoal.Stay.WAITS;
        }
        if (hasDriftedAway(tNanos, sigma)) {
            return HuntGoal.Stay.HELD;
        }
        stoppedShort++;
        tellShort(tNanos);
        return HuntGoal.Stay.SHORT;
    }

    private void tellShort(long tNanos) {
        listener.hint(tNanos, Hint.STOPPED_SHORT, Decibels.apart(best.value() - loss, best.value()));
    }

    /** What was sought has been passed just now. */
    void passed(long tNanos) {
        restsSinceNanos = tNanos;
        saidRest = false;
    }

    /**
     * On the way back the hand may rest before it is there; that is told once, after the longest stay.
     *
     * @param near whether the hand has come near enough to have stopped short
     */
    void watchRest(long tNanos, boolean near) {
        if (!near || sight.slope.perSecond() != 0) {
            restsSinceNanos = tNanos;
        }
        long rested = Elapsed.nanos(restsSinceNanos, tNanos);
        if (!saidRest && rested >= MOST_DWELLS * dwellNanos) {
            saidRest = true;
            loss = best.value() - sight.meanOver(OF_DWELL * 1e-9 * rested);
            tellShort(tNanos);
        }
    }

    private double allowed(double unsure, boolean late) {
        double within = HELD_WITHIN * Math.abs(best.value());
        if (unsure <= QUIET * within) {
            return within + unsure;
        }
        double surelyWithin = within - unsure;
        return late ? Math.max(surelyWithin, stoppedShort * EACH_TIME * unsure / SURELY) : surelyWithin;
    }

    /** A hand that still creeps goes up; a set that drifts away goes down. */
    private boolean isDrift() {
        double slope = sight.slope.perSecond();
        return slope <= 0 && -slope <= FASTEST_DRIFT * Math.abs(best.value());
    }

    private boolean hasDriftedAway(long tNanos, double sigmaOfLoss) {
        Pyramid means = sight.front.pyramid;
        int span = sight.front.octave(DRIFT_SECONDS);
        double apartSeconds = sight.blockSeconds() * Pyramid.length(span);
        if (!means.has(span, 2) || !(apartSeconds > 0)) {
            return false;
        }
        double lostMeanwhile = means.mean(span, Pyramid.length(span)) - means.mean(span);
        double sigma = Math.sqrt(2) * sight.front.noise.sigma(span, best.value());
        double times = Elapsed.seconds(best.atNanos(), tNanos) / apartSeconds;
        double drifted = times * lostMeanwhile;
        boolean shows = lostMeanwhile > DRIFT_SHOWS * sigma
                && lostMeanwhile <= FASTEST_DRIFT * apartSeconds * Math.abs(best.value());
        if (!shows || loss > drifted + SURELY * (times * sigma + sigmaOfLoss)) {
            return false;
        }
        double amountDb = Decibels.apart(best.value() - loss, best.value());
        best.lowerBy(loss);
        listener.hint(tNanos, Hint.BEST_AGED, amountDb);
        return true;
    }
}
