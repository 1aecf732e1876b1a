package org.slugpeak.core.peak;

/**
 * Means over the last 1, 2, 4 ... 256 blocks, at every block. Each mean is made of the two half as long, so that nothing
 * is ever subtracted: a huge value leaves no rounding error behind when it has gone. Constant cost per block.
 */
final class Pyramid {

    /** Windows of 1 to 256 blocks: 20 ms to 5 s of a fast source, and more than any pass takes on a slow meter. */
    static final int LEVELS = 9;

    /** Third differences reach back over four windows. */
    private static final int WINDOWS_KEPT = 4;

    /** The rings of all levels, one after the other: all that is read lies close together. */
    private final double[] means = new double[ring(LEVELS)];
    /** Nobody asks for the middle of a window older than the newest one. */
    private final long[] times = new long[length(LEVELS - 1)];

    /** The newest mean of every level once more: almost every look is at these. */
    private final double[] newest = new double[LEVELS];

    private long blocks;

    /** Where the ring of a level begins: the ones before it have 4, 8, 16 ... places. */
    private static int ring(int level) {
        return (WINDOWS_KEPT << level) - WINDOWS_KEPT;
    }

    private static int mask(int level) {
        return (WINDOWS_KEPT << level) - 1;
    }

    static int length(int level) {
        return 1 << level;
    }

    void add(long tNanos, double value) {
        int now = (int) (blocks & Integer.MAX_VALUE);
        times[now & (times.length - 1)] = tNanos;
        means[now & mask(0)] = value;
        newest[0] = value;
        blocks++;
        double newer = value;
        for (int level = 1; level < LEVELS && blocks >= length(level); level++) {
            double older = means[ring(level - 1) + ((now - length(level - 1)) & mask(level - 1))];
            newer = 0.5 * newer + 0.5 * older;
            means[ring(level) + (now & mask(level))] = newer;
            newest[level] = newer;
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
        return newest[level];
    }

    /** The mean that ended {@code blocksAgo} blocks ago; not more than three windows. */
    double mean(int level, int blocksAgo) {
        return means[ring(level) + ((int) (blocks - 1 - blocksAgo) & mask(level))];
    }

    /** Time of the block in the middle of the newest window of a level. */
    long middleNanos(int level) {
        return times[(int) (blocks - 1 - length(level) / 2) & (times.length - 1)];
    }
}
