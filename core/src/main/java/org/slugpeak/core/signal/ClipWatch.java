package org.slugpeak.core.signal;

/**
 * Sees a sound input clip: samples that stay at full scale. A sine that just fits touches full scale with one sample, so
 * it takes three in a row, and on fast converters as many as 60 microseconds hold.
 */
final class ClipWatch {

    private static final double SECONDS_AT_TOP = 60e-6;

    private final double fullScale;
    private final int enough;
    private int atTop;
    private long sinceLast = Long.MAX_VALUE / 2;

    ClipWatch(double rateHz, double fullScale) {
        this.fullScale = fullScale;
        this.enough = Math.max(3, (int) Math.ceil(SECONDS_AT_TOP * rateHz));
    }

    void take(double sample) {
        sinceLast++;
        if (sample < fullScale && sample > -fullScale) {
            atTop = 0;
        } else if (++atTop >= enough) {
            sinceLast = 0;
        }
    }

    /** Whether any of the last {@code samples} was clipped. */
    boolean within(long samples) {
        return sinceLast < samples;
    }
}
