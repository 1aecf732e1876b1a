package org.slugpeak.core.peak;

/** How many readings make one block of about {@value #BLOCK_SECONDS} s. One thread at a time. */
final class Pace {

    private static final double BLOCK_SECONDS = 0.02;
    /** A block is resized only when the pace has changed by more than this. */
    private static final double HYSTERESIS = 1.3;
    /** Readings between two looks at the block size. */
    private static final int LOOK_EVERY = 8;
    /** No source gives more than a million readings a second. */
    private static final int MOST_IN_BLOCK = 20_000;

    private double intervalSeconds;
    private int readings;
    private int blockSize = 1;

    /** Takes the present interval; true if blocks have another size from now on. */
    boolean look(double newIntervalSeconds) {
        intervalSeconds = newIntervalSeconds;
        readings = (readings + 1) % LOOK_EVERY;
        return readings == 0 && resize();
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
