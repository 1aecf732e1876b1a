package org.slugpeak.core.progress;

import java.util.ArrayDeque;
import java.util.Deque;
import org.slugpeak.core.decibel.Decibels;

/** Tells when a reading has stood still for a while. One thread at a time. */
final class SteadyWatch {

    private record Level(long tNanos, double value) {}

    private final long lengthNanos;
    private final double spreadDb;
    private final Deque<Level> levels = new ArrayDeque<>();
    private long sinceNanos;

    /**
     * A watch.
     *
     * @param lengthNanos how long the reading must stand still
     * @param spreadDb how much it may move meanwhile, dB
     */
    SteadyWatch(long lengthNanos, double spreadDb) {
        this.lengthNanos = lengthNanos;
        this.spreadDb = spreadDb;
    }

    void see(long tNanos, double value) {
        if (levels.isEmpty()) {
            sinceNanos = tNanos;
        }
        levels.addLast(new Level(tNanos, Math.abs(value)));
        while (levels.peekFirst().tNanos() < tNanos - lengthNanos) {
            levels.removeFirst();
        }
    }

    void forget() {
        levels.clear();
    }

    boolean isSteady() {
        if (levels.size() < 2 || levels.peekLast().tNanos() - sinceNanos < lengthNanos) {
            return false;
        }
        double least = levels.stream().mapToDouble(Level::value).min().orElse(0);
        double most = levels.stream().mapToDouble(Level::value).max().orElse(0);
        return least > 0 && Decibels.of(most / least) <= spreadDb;
    }

    /** Mean of what was seen in the time; NaN where nothing was. */
    double mean() {
        return levels.stream().mapToDouble(Level::value).average().orElse(Double.NaN);
    }
}
