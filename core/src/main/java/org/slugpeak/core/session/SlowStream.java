package org.slugpeak.core.session;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Notices once that readings come too slowly to follow a turning hand. One thread at a time. */
final class SlowStream {

    /** So many intervals are looked at; chosen: of five the median lets two pauses pass. */
    private static final int INTERVALS = 5;

    /** One reading a second and what is slower; a tenth is left for the jitter of a stream that means to send each second. */
    private static final double SLOW_SECONDS = 0.9;

    private final long[] intervals = new long[INTERVALS];
    private int count = -1;
    private long lastNanos;

    /** Gives the usual interval in seconds, once, where it is too long. */
    OptionalDouble see(long tNanos) {
        if (count == INTERVALS) {
            return OptionalDouble.empty();
        }
        if (count >= 0) {
            intervals[count] = tNanos - lastNanos;
        }
        count++;
        lastNanos = tNanos;
        return count == INTERVALS ? verdict() : OptionalDouble.empty();
    }

    private OptionalDouble verdict() {
        Arrays.sort(intervals);
        double seconds = intervals[INTERVALS / 2] / 1e9;
        return seconds >= SLOW_SECONDS ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }
}
