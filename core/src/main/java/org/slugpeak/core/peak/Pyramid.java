package org.slugpeak.core.peak;

/**
 * Means over the last 1, 2, 4 ... 256 blocks, at every block. Each mean is made of the two half as long, so that nothing
 * is ever subtracted: a huge value leaves no rounding error behind when it has gone. Constant cost per block. The means of 2^n blocks are those of
 * octave n.
 */
final class Pyramid {

    /** Windows of 1 to 256 blocks: 20 ms to 5 s of a fast source, and more than any pass takes on a slow meter. */
    static final int OCTAVES = 9;

    /** Third differences reach back over four windows. */
    private static final int WINDOWS_KEPT = 4;

    /** The rings of all octaves, one after the other: all that is read lies close together. */
    private final double[] means = new double[ring(OCTAVES)];
    /** Nobody asks for the middle of a window older than the newest one. */
    private final long[] times = new long[length(OCTAVES - 1)];

    /** The newest mean of every octave once more: almost every look is at these. */
    private final double[] newest = new double[OCTAVES];

    private long blocks;

    /** Where the ring of an octave begins: the ones before it have 4, 8, 16 ... places. */
    private static int ring(int octave) {
        return (WINDOWS_KEPT << octave) - WINDOWS_KEPT;
    }

    private static int mask(int octave) {
        return (WINDOWS_KEPT << octave) - 1;
    }

    static int length(int octave) {
        return 1 << octave;
    }

    void add(long tNanos, double value) {
        int now = (int) (blocks & Integer.MAX_VALUE);
        times[now & (times.length - 1)] = tNanos;
        means[now & mask(0)] = value;
        newest[0] = value;
        blocks++;
        double newer = value;
        for (int octave = 1; octave < OCTAVES && blocks >= length(octave); octave++) {
            double older = means[ring(octave - 1) + ((now - length(octave - 1)) & mask(octave - 1))];
            newer = 0.5 * newer + 0.5 * older;
            means[ring(octave) + (now & mask(octave))] = newer;
            newest[octave] = newer;
        }
    }

    void clear() {
        blocks = 0;
    }

    long blocks() {
        return blocks;
    }

    /** Whether {@code windows} adjacent windows of this octave have been filled. */
    boolean has(int octave, int windows) {
        return blocks >= (long) windows << octave;
    }

    double mean(int octave) {
        return newest[octave];
    }

    /** The mean that ended {@code blocksAgo} blocks ago; not more than three windows. */
    double mean(int octave, int blocksAgo) {
        return means[ring(octave) + ((int) (blocks - 1 - blocksAgo) & mask(octave))];
    }

    /** Time of the block in the middle of the newest window of an octave. */
    long middleNanos(int octave) {
        return times[(int) (blocks - 1 - length(octave) / 2) & (times.length - 1)];
    }
}
