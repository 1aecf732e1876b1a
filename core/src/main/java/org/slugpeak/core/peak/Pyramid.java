package org.slugpeak.core.peak;

/**
 * Means over the last 1, 2, 4 ... 256 blocks, at every block. Each mean is made of the two half as long, so that nothing
 * is ever subtracted: a huge value leaves no rounding error behind when it has gone. Constant cost per block.
 */
final class Pyramid {

    /** Windows of 1 to 256 blocks: 20 ms to 5 s of a fast source, and more than any pass takes on a slow meter. */
    static final int LEVELS = 9;

    /** Third differences reach back four windows; four more leave room for the neighbours. */
    private static final int WINDOWS_KEPT = 8;

    private final double[][] means = new double[LEVELS][];
    private final long[] times = new long[WINDOWS_KEPT << (LEVELS - 1)];
    private long blocks;

    Pyramid() {
        for (int level = 0; level < LEVELS; level++) {
            means[level] = new double[WINDOWS_KEPT << level];
        }
    }

    static int length(int level) {
        return 1 << level;
    }

    void add(long tNanos, double value) {
        int now = (int) (blocks & (times.length - 1));
        times[now] = tNanos;
        means[0][now & (WINDOWS_KEPT - 1)] = value;
        blocks++;
        for (int level = 1; level < LEVELS && blocks >= length(level); level++) {
            int half = length(level - 1);
            double[] finer = means[level - 1];
            double[] own = means[level];
            int mask = finer.length - 1;
            own[now & (own.length - 1)] = 0.5 * finer[now & mask] + 0.5 * finer[(now - half) & mask];
        }
    }

    void clear() {
        blocks = 0;
    }

    long blocks() {
        return blocks;
    }

    /** Whether {@code windows} adjacent windows of this level have been filled. */
    boolean has(int level, int windows) {
        return blocks >= (long) windows << level;
    }

    double mean(int level) {
        return mean(level, 0);
    }

    /** The mean that ended {@code blocksAgo} blocks ago; not more than seven windows. */
    double mean(int level, int blocksAgo) {
        double[] own = means[level];
        return own[(int) (blocks - 1 - blocksAgo) & (own.length - 1)];
    }

    /** Time of the block in the middle of the newest window of a level. */
    long middleNanos(int level) {
        return times[(int) (blocks - 1 - length(level) / 2) & (times.length - 1)];
    }
}
