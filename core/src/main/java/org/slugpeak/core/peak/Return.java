package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;

/**
 * When, after a pass, the level is back at the best.
 *
 * <p><b>Definition.</b> It has made good {@value #RECOVERED} of what was lost since the pass, it rises, no more than {@value #MISSED_DB} dB and two
 * sigma are missing, and one of these: at its speed it will be there within a hand's reaction; it stands still within
 * {@value #STALLED_DB} dB; the mean over {@value #STEADY_SECONDS} s (twice that in noise) is at the best within its uncertainty or within {@value #NEAR_DB} dB.
 *
 * <p><b>Edges.</b> Before anything was lost nothing can be made good. A best of zero is reached by zero.
 *
 * <p><b>Algorithm.</b> Near its top every resonance is a parabola of the angle, so the time left is twice what is missing over the speed at which it
 * shrinks ({@link Slope}).
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Return {

    /** A return has to make good this part of what was lost. */
    private static final double RECOVERED = 0.5;
    /**
     * What a set that drifts by 1 dB a minute loses in the 3 s of turning round: a fall that is not worth turning back for. It is so much more
     * for each time that the hand crossed a top that was lower already.
     */
    private static final double NEAR_DB = 0.05;
    /** Where nothing moves any more although the hand turns, it is at the top. */
    private static final double STALLED_DB = 0.1;
    /** More than a dwell would let pass must not be missing. */
    private static final double MISSED_DB = 0.15;
    /** A single wild mean shall not decide that the level is back; where its noise is more than {@link #NEAR_DB}, one twice as long has to. */
    private static final double STEADY_SECONDS = 0.35;
    /** A dip is as deep as means of this length show: {@link Sway} looks at the same. */
    private static final double DIP_SECONDS = 0.05;

    private static final double NEAR = Decibels.lost(NEAR_DB);
    private static final double STALLED = Decibels.lost(STALLED_DB);
    private static final double MISSED = Decibels.lost(MISSED_DB);
    private static final double SURELY = 2;

    private final Sight sight;
    private final Best best;
    private final Haste haste;
    private double goal;
    private double deepest;
    private double dip;
    private int missedBefore;

    Return(Sight sight, Best best, Haste haste) {
        this.sight = sight;
        this.best = best;
        this.haste = haste;
    }

    /**
     * A top was passed just now.
     *
     * @param backTo what the hand can come back to: the best, or a little less where that has become of it
     */
    void begin(double backTo) {
        missedBefore = backTo < best.value() ? missedBefore + 1 : missedBefore;
        goal = backTo;
        deepest = loss();
        dip = lossAtOnce();
    }

    void restart() {
        missedBefore = 0;
    }

    /** The most that was missing since the pass, for as short a time as a beat's dip lasts. */
    double dip() {
        return dip;
    }

    /** The hand stopped short by so much. */
    void missed(double loss) {
        deepest = loss;
    }

    void look(long tNanos) {
        deepest = Math.max(deepest, loss());
        dip = Math.max(dip, lossAtOnce());
        if (isSoonThere() && loss() <= (1 - RECOVERED) * deepest && !isNear()) {
            haste.comesSoon(tNanos, missing(), mayMiss());
        }
    }

    private double loss() {
        return goal - sight.level.value();
    }

    private double lossOver(double seconds) {
        return goal - sight.meanOver(seconds);
    }

    /** The smoothed level knows of slow noise, and hardly follows it: a turn is seen in means that do. */
    private double lossAtOnce() {
        int octave = sight.front.octave(DIP_SECONDS);
        double surely = SURELY * sight.front.noise.white(octave, goal);
        return Math.max(loss(), goal - sight.front.pyramid.mean(octave) - surely);
    }

    /** One sigma of a loss over so many seconds. */
    private double uncertainty(double seconds) {
        return Sigma.ofDifference(sight.sigmaOver(seconds, goal), best.sigma());
    }

    boolean isBack(boolean turnedUp) {
        boolean rises = turnedUp || sight.slope.perSecond() > 0;
        return rises && hasRecovered() && isNear() && isThere();
    }

    /** Whether enough of what was lost is made good. */
    boolean hasRecovered() {
        double good = (1 - RECOVERED) * deepest;
        return loss() <= good && lossOver(STEADY_SECONDS) <= good;
    }

    private boolean isNear() {
        return missing() <= mayMiss();
    }

    private double missing() {
        return best.value() - sight.level.value();
    }

    private double mayMiss() {
        return MISSED * Math.abs(best.value()) + SURELY * best.sigma();
    }

    private boolean isThere() {
        double size = Math.abs(goal);
        double near = (1 + missedBefore) * NEAR * size;
        double seconds = uncertainty(STEADY_SECONDS) > near ? 2 * STEADY_SECONDS : STEADY_SECONDS;
        return isSoonThere()
                || (sight.slope.perSecond() == 0 && loss() <= STALLED * size)
                || lossOver(seconds) <= Math.max(near, uncertainty(seconds));
    }

    private boolean isSoonThere() {
        double leadSeconds = haste.leadSeconds() + sight.front.pace.intervalSeconds() / 2;
        return sight.slope.secondsToTop(goal) <= leadSeconds;
    }
}
