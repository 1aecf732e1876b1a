package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;

/**
 * The course of a level, thinned while it is gathered so that a day of it needs no more memory than a minute: each stretch keeps its
 * least and its greatest, so that no jump is lost. Where there are too many stretches every two become one. One thread at a time.
 */
final class Trace {

    /** More than five for each column of the chart, which is 636 wide. */
    static final int MOST_STRETCHES = 4096;

    private static final long SHORTEST_NANOS = 1_000_000;

    /** Longer than any log; twice as much would not fit. */
    private static final long LONGEST_NANOS = Long.MAX_VALUE / 2;

    private final List<Stretch> stretches = new ArrayList<>();
    private long widthNanos = SHORTEST_NANOS;

    /**
     * What happened in a short time.
     *
     * @param tNanos of the first level in it
     * @param least of the levels
     * @param most of the levels
     */
    record Stretch(long tNanos, double least, double most) {

        Stretch with(Stretch later) {
            return new Stretch(tNanos, Math.min(least, later.least), Math.max(most, later.most));
        }
    }

    void add(long tNanos, double level) {
        Stretch one = new Stretch(tNanos, level, level);
        int last = stretches.size() - 1;
        if (last >= 0 && Math.floorDiv(tNanos, widthNanos) == Math.floorDiv(stretches.get(last).tNanos, widthNanos)) {
            stretches.set(last, stretches.get(last).with(one));
            return;
        }
        if (stretches.size() == MOST_STRETCHES) {
            halve();
        }
        stretches.add(one);
    }

    /** What came since then is gone. */
    void forget(long sinceNanos) {
        while (!stretches.isEmpty() && stretches.get(stretches.size() - 1).tNanos > sinceNanos) {
            stretches.remove(stretches.size() - 1);
        }
    }

    void clear() {
        stretches.clear();
        widthNanos = SHORTEST_NANOS;
    }

    List<Stretch> stretches() {
        return List.copyOf(stretches);
    }

    private void halve() {
        for (int i = 0; i < MOST_STRETCHES / 2; i++) {
            stretches.set(i, stretches.get(2 * i).with(stretches.get(2 * i + 1)));
        }
        stretches.subList(MOST_STRETCHES / 2, MOST_STRETCHES).clear();
        widthNanos = Math.min(LONGEST_NANOS, 2 * widthNanos);
    }
}
