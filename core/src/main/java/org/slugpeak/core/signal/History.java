package org.slugpeak.core.signal;

/** The latest samples of a stream, always lying in one piece so that a window over them is a plain loop. */
final class History {

    private final int kept;
    private final double[] data;
    private int end;
    private long total;

    History(int kept) {
        this.kept = kept;
        this.data = new double[2 * kept + 1024];
    }

    void append(double sample) {
        if (end == data.length) {
            System.arraycopy(data, end - kept, data, 0, kept);
            end = kept;
        }
        data[end++] = sample;
        total++;
    }

    boolean holds(int samples) {
        return total >= samples;
    }

    /** Number of samples ever taken: the stream's own clock. */
    long total() {
        return total;
    }

    /** The array to read from; valid until the next append. */
    double[] data() {
        return data;
    }

    /** Where the latest {@code samples} begin in {@link #data()}. */
    int from(int samples) {
        return end - samples;
    }
}
