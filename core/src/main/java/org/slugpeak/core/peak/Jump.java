package org.slugpeak.core.peak;

/** A sudden change of level: until it has lasted for {@link #SETTLES_NANOS} it may be a range change that goes back. */
final class Jump {

    private static final double SETTLES_NANOS = 1e9;
    /** Part of the level before the jump; 1.5 dB lower is lower for good. */
    private static final double LOWER = Decibels.part(1.5);

    private boolean pending;
    private long atNanos;
    private double before;

    void begin(long tNanos, double levelBefore) {
        if (!pending) {
            before = levelBefore;
        }
        pending = true;
        atNanos = tNanos;
    }

    boolean pending() {
        return pending;
    }

    boolean settled(long tNanos) {
        return Elapsed.nanos(atNanos, tNanos) >= SETTLES_NANOS;
    }

    boolean lowered(double level) {
        return level < before - LOWER * Math.abs(before);
    }

    void clear() {
        pending = false;
    }
}
