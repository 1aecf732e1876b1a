package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;

/**
 * Whether there is a signal to judge by: not while a jump settles, nor while next to nothing is left of it. What was best stays best when the
 * signal comes back to its level; where it settles at a lower one, the best begins anew, and that is said.
 *
 * <p>One thread at a time.
 */
final class Signal {

    /** What the newest block shows. */
    enum Seen {
        /** Nothing to judge by. */
        AWAY,
        /** The level goes on as if nothing had been. */
        GOES_ON,
        /** The level is another one for good: what was best is so no longer. */
        OTHER_LEVEL
    }

    /** So much of the level before has to come back. */
    private static final double BACK_PART = 0.1;

    /** What goes on for so long with a small level is a generator turned down, not one turned off. */
    private static final double GONE_FOR_GOOD_SECONDS = 10;

    private static final double STANDS_OUT = 10;

    private final Best best;
    private final PeakListener listener;
    private final Jump jump = new Jump();
    private boolean gone;
    private double goneFrom;
    private long goneAtNanos;
    private double loweredFrom = Double.NaN;
    private Best.Mark loweredBest = Best.Mark.NONE;

    Signal(Best best, PeakListener listener) {
        this.best = best;
        this.listener = listener;
    }

    void restart() {
        jump.clear();
        gone = false;
        loweredFrom = Double.NaN;
    }

    void jumped(long tNanos, double before) {
        jump.begin(tNanos, before);
    }

    /** Whether the level may be judged without a look here. */
    boolean isSettled() {
        return !gone && !jump.pending();
    }

    Seen look(long tNanos, Sight sight) {
        if (jump.pending() && !jump.settles(tNanos)) {
            return Seen.AWAY;
        }
        return gone ? whileGone(tNanos, sight) : settled(tNanos, sight);
    }

    private Seen whileGone(long tNanos, Sight sight) {
        jump.clear();
        double level = sight.level.value();
        if (Math.abs(level) >= BACK_PART * Math.abs(goneFrom)) {
            gone = false;
            listener.hint(tNanos, Hint.SIGNAL_BACK, Decibels.apart(level, goneFrom));
            return Seen.GOES_ON;
        }
        boolean standsOut = Math.abs(level) > STANDS_OUT * sight.level.sigma();
        if (!standsOut || Elapsed.seconds(goneAtNanos, tNanos) < GONE_FOR_GOOD_SECONDS) {
            return Seen.AWAY;
        }
        gone = false;
        return lower(tNanos, goneFrom, level);
    }

    private Seen settled(long tNanos, Sight sight) {
        double level = sight.level.value();
        double before = jump.before();
        Jump.Settled what = jump.settle(level, sight.slope.perSecond());
        if (!Double.isNaN(loweredFrom) && Jump.isSame(loweredFrom, level)) {
            best.recall(loweredBest);
            listener.hint(tNanos, Hint.SIGNAL_BACK, Decibels.apart(level, loweredFrom));
            loweredFrom = Double.NaN;
            return Seen.GOES_ON;
        }
        return switch (what) {
            case GONE -> {
                gone = true;
                goneFrom = before;
                goneAtNanos = tNanos;
                listener.hint(tNanos, Hint.SIGNAL_GONE, level / before);
                yield Seen.AWAY;
            }
            case LOWER -> lower(tNanos, before, level);
            case SAME, OTHER -> Seen.GOES_ON;
        };
    }

    private Seen lower(long tNanos, double before, double level) {
        if (!best.known()) {
            return Seen.GOES_ON;
        }
        loweredFrom = before;
        loweredBest = best.mark();
        double amountDb = Decibels.apart(level, best.value());
        best.forget();
        listener.hint(tNanos, Hint.BEST_AGED, amountDb);
        return Seen.OTHER_LEVEL;
    }
}
