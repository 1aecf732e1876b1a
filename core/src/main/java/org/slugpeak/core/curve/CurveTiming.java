package org.slugpeak.core.curve;

/**
 * When a point of a response curve is taken; the reading must stand in any case. Immutable; any thread may use it.
 *
 * @param byItself whether the generator is set by the tool, and says when it stands
 * @param seesMove whether a reading that has moved and stands again is taken before the dwell is over
 * @param dwellNanos how long after the setting a reading is taken though nothing has moved; {@link Long#MAX_VALUE} where only
 *     the user's key counts
 */
public record CurveTiming(boolean byItself, boolean seesMove, long dwellNanos) {

    private static final long SETTLE_NANOS = 1_500_000_000L;

    /**
     * For a generator that is set by the tool.
     *
     * @return settling, and one second of readings
     */
    public static CurveTiming automatic() {
        return new CurveTiming(true, false, SETTLE_NANOS);
    }

    /**
     * For a generator that is set by hand.
     *
     * @param dwellSeconds 0 where only the user's key counts
     * @return timing
     */
    public static CurveTiming byHand(double dwellSeconds) {
        boolean byKey = dwellSeconds == 0;
        return new CurveTiming(false, !byKey, byKey ? Long.MAX_VALUE : (long) (dwellSeconds * 1e9));
    }
}
