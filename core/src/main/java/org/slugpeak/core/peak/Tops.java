package org.slugpeak.core.peak;

import org.slugpeak.core.decibel.Decibels;

/** More than one maximum in a travel: which are one, which are told as two. One thread at a time. */
final class Tops {

    /** Lower by no more than a dwell would let pass: the same, as far as it matters. */
    private static final double SAME_WITHIN = Decibels.lost(0.15);
    /** Two lower tops this close to each other are one, met twice; it is told once. */
    private static final double MET_AGAIN_DB = 0.3;
    /** A shallower dip is a hand that dithers, as far as one can see. */
    private static final double LEAST_DIP_DB = 0.3;
    /** A hand that turns back at a verdict does not fall this far; so a rise beyond after it is another maximum. */
    private static final double SEPARATE_DB = 3;

    private final PeakListener listener;
    private final Orientation orientation;
    private double told = Double.NaN;
    private double first = Double.NaN;
    private double dip = Double.NaN;

    Tops(PeakListener listener, Orientation orientation) {
        this.listener = listener;
        this.orientation = orientation;
    }

    void restart() {
        told = Double.NaN;
        first = Double.NaN;
    }

    /** Whether a top that misses the best by so much is as good as the best. */
    boolean isTheSame(Best best, double missing) {
        return missing <= SAME_WITHIN * Math.abs(best.value());
    }

    /** The level falls from a top that is lower than the best; whether that was told. */
    boolean lower(long tNanos, Best best, double bottom) {
        double top = best.top().value();
        boolean met = !Double.isNaN(told) && Decibels.apart(top, told) <= MET_AGAIN_DB;
        if (met || Decibels.apart(bottom, top) < LEAST_DIP_DB) {
            return false;
        }
        told = top;
        tell(tNanos, best.value(), top, bottom);
        return true;
    }

    /** The level rises beyond a top behind a bottom; whether that is another top coming. */
    boolean higher(double top, double bottom) {
        boolean separate = Decibels.apart(bottom, top) >= SEPARATE_DB;
        if (separate) {
            first = top;
            dip = bottom;
        }
        return separate;
    }

    /** The best has been passed; if it is the second of two, that is told. */
    void passed(long tNanos, double best) {
        if (!Double.isNaN(first)) {
            tell(tNanos, first, best, dip);
            first = Double.NaN;
        }
    }

    private void tell(long tNanos, double one, double two, double bottom) {
        double dipDb = Decibels.apart(bottom, Math.min(one, two));
        listener.twoPeaks(tNanos, orientation.asRead(one), orientation.asRead(two), dipDb);
    }
}
