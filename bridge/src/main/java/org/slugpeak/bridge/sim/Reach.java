package org.slugpeak.bridge.sim;

/** How far something turns before it stops, and how often a hand that seeks has met the stops. One thread at a time. */
final class Reach {

    static final Reach UNLIMITED = new Reach(Double.POSITIVE_INFINITY);

    /** Both ends, and the first one once more: there is nothing to be found. */
    private static final int ENOUGH = 3;

    private final double turns;
    private int met;

    Reach(double turns) {
        this.turns = turns;
    }

    /** Degrees from stop to stop as often as a search goes there; nothing where there are none. */
    double degreesOfSearch() {
        return isLimited() ? ENOUGH * 2 * turns * 360 : 0;
    }

    boolean isLimited() {
        return Double.isFinite(turns);
    }

    /** Whether a position lies at a stop or beyond. */
    boolean isEnd(double position) {
        return Math.abs(position) >= turns;
    }

    /** Notes a stop that was met while seeking; whether the hand has been everywhere. */
    boolean meets() {
        met++;
        return met >= ENOUGH;
    }
}
