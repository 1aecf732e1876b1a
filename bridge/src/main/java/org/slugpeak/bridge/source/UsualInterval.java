package org.slugpeak.bridge.source;

import java.util.Arrays;

/** The interval at which readings usually come: the median of the last few. One thread at a time. */
final class UsualInterval {

    private static final int KEPT = 15;
    private static final int ENOUGH = 3;

    private final long[] intervalsNanos = new long[KEPT];
    private int count;
    private int next;
    private long medianNanos;

    void add(long intervalNanos) {
        intervalsNanos[next] = intervalNanos;
        next = (next + 1) % KEPT;
        count = Math.min(count + 1, KEPT);
        if (count < KEPT || next == 0) {
            long[] sorted = Arrays.copyOf(intervalsNanos, count);
            Arrays.sort(sorted);
            medianNanos = sorted[count / 2];
        }
    }

    boolean isKnown() {
        return count >= ENOUGH;
    }

    long nanos() {
        return medianNanos;
    }
}
