package org.slugpeak.core.peak;

/** How quickly readings come, and how many of them make one block of about {@value #BLOCK_SECONDS} s. */
final class Pace {

    private static final double BLOCK_SECONDS = 0.02;
    /** Readings over which the interval is averaged. */
    private static final double MEMORY = 32;
    /** A single interval counts at most this many times the usual one: a drop-out is no new pace. */
    private static final double LONGEST = 4;
    /** A block is resized only when the pace has changed by more than this. */
    private static final double HYSTERESIS = 1.3;
    /** Readings between two looks at the block size. */
    private static final int LOOK_EVERY = 8;

    private static final int MOST_IN_BLOCK = 1_000_000;

    private double intervalSeconds;
    private int intervals;
    private double known;
    private double weight;
    private int blockSize = 1;

    /** Takes the time between two readings; true if blocks have another size from now on. */
    boolean add(double seconds) {
        intervals = (intervals + 1) & Integer.MAX_VALUE;
        if (known < MEMORY) {
            known++;
            weight = 1 / known;
        }
        double most = known <= LOOK_EVERY ? seconds : LONGEST * intervalSeconds;
        double taken = intervalSeconds > 0 ? Math.min(seconds, most) : seconds;
        intervalSeconds += (taken - intervalSeconds) * weight;
        return intervals % LOOK_EVERY == 0 && resize();
    }

    private boolean resize() {
        double fit = intervalSeconds > 0 ? BLOCK_SECONDS / intervalSeconds : 1;
        if (fit < blockSize * HYSTERESIS && fit * HYSTERESIS > blockSize - 0.5) {
            return false;
        }
        int before = blockSize;
        blockSize = (int) Math.max(1, Math.min(Math.rint(fit), MOST_IN_BLOCK));
        return blockSize != before;
    }

    int blockSize() {
        return blockSize;
    }

    double intervalSeconds() {
        return intervalSeconds;
    }

    double blockSeconds() {
        return intervalSeconds * blockSize;
    }
}
