package org.slugpeak.core.peak;

/** Time between two readings, exact to the nanosecond, saturating where a long cannot hold it. */
final class Elapsed {

    private Elapsed() {}

    static long nanos(long from, long to) {
        long difference = to - from;
        boolean overflow = ((to ^ from) & (to ^ difference)) < 0;
        return overflow ? (to < 0 ? Long.MIN_VALUE : Long.MAX_VALUE) : difference;
    }

    static double seconds(long from, long to) {
        return nanos(from, to) / 1e9;
    }
}
