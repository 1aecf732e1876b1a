package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;

/**
 * A change of level that no hand makes: the generator was turned, switched off or on, or the meter changed its range.
 *
 * <p><b>Definition.</b> From the jump until {@value #SETTLES_SECONDS} s after the last one the level is not settled. Settled, it is what it was
 * before if it is within {@value #SAME_DB} dB of that; <i>gone</i> if it is {@value #GONE_PART} of it or less; <i>lower</i> if it is
 * {@value #LOWER_DB} dB lower or more and falls no further; else <i>other</i>.
 *
 * <p><b>Edges.</b> The level before is that before the first of several jumps. What is compared are magnitudes; zero is as good a level as any.
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Jump {

    /** What has become of the level. */
    enum Settled {
        /** As it was. */
        SAME,
        /** Next to nothing is left. */
        GONE,
        /** For good, as far as one can see. */
        LOWER,
        /** Higher, a little lower, or it goes on falling. */
        OTHER
    }

    private static final double SETTLES_SECONDS = 1;
    private static final double LOWER_DB = 1.5;
    private static final double SAME_DB = 1;
    /** 26 dB: deeper than any tuned circuit takes a reading within a hand's turn. */
    private static final double GONE_PART = 0.05;

    private static final double LOWER = Decibels.lost(LOWER_DB);
    private static final double SAME = Decibels.lost(SAME_DB);

    private boolean pending;
    private long atNanos;
    private double before;

    void begin(long tNanos, double levelBefore) {
        if (!pending) {
            before = levelBefore;
        }
        pending = true;
        atNanos = tNanos;
    }

    boolean pending() {
        return pending;
    }

    boolean settles(long tNanos) {
        return pending && Elapsed.seconds(atNanos, tNanos) >= SETTLES_SECONDS;
    }

    /** What the level has come to; the jump is over. */
    Settled settle(double level, double slope) {
        pending = false;
        if (isSame(before, level)) {
            return Settled.SAME;
        }
        if (Math.abs(level) <= GONE_PART * Math.abs(before)) {
            return Settled.GONE;
        }
        return level < before - LOWER * Math.abs(before) && slope >= 0 ? Settled.LOWER : Settled.OTHER;
    }

    /** Whether two levels are one, as far as a switched generator comes back to its level. */
    static boolean isSame(double before, double level) {
        return Math.abs(level - before) <= SAME * Math.abs(before);
    }

    double before() {
        return before;
    }

    void clear() {
        pending = false;
    }
}
