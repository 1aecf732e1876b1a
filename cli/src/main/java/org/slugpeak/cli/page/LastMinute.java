package org.slugpeak.cli.page;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The readings of the last minute, thinned, for a browser that has just come. Any thread may use it; nobody holds it long. */
final class LastMinute {

    static final long LASTS_NANOS = 60_000_000_000L;

    /** Ten a second are more than a telephone has points across. */
    static final long APART_NANOS = 100_000_000L;

    private final Deque<PageState.Spot> spots = new ArrayDeque<>();

    synchronized void add(PageState.Spot spot) {
        if (!spots.isEmpty() && spot.tNanos() - spots.getLast().tNanos() < APART_NANOS) {
            return;
        }
        spots.addLast(spot);
        while (spot.tNanos() - spots.getFirst().tNanos() > LASTS_NANOS) {
            spots.removeFirst();
        }
    }

    synchronized List<PageState.Spot> spots() {
        return List.copyOf(spots);
    }
}
