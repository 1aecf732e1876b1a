package org.slugpeak.bridge.line;

import java.util.concurrent.TimeUnit;

/**
 * Places an instrument's own time stamps on the axis of the arrival times. The first stamp is tied to its arrival; from then
 * on the instrument's clock counts, so that the jitter of the line does not reach the readings. It is tied anew when the
 * clock went back (the instrument was reset) or when a stamp lies in the future. One thread at a time.
 */
final class InstrumentClock {

    /** A board's ceramic resonator may be wrong by half a percent. */
    private static final double FASTEST_CLOCK = 0.01;

    private static final long FUTURE_ALLOWED_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final double wrapsAtNanos;
    private boolean tied;
    private double stampNanos;
    private long lastNanos;
    private long tiedAtNanos;

    InstrumentClock(double wrapsAtNanos) {
        this.wrapsAtNanos = wrapsAtNanos;
    }

    /** Forgets the instrument's clock but not the last time given out: time never goes back. */
    void begin() {
        tied = false;
    }

    /** Whether this stamp can only come from an instrument that has begun its time again. */
    boolean restartsWith(double nextStampNanos, long arrivalNanos) {
        return tied
                && (forward(nextStampNanos) < 0
                        || isInFuture(lastNanos + Math.round(forward(nextStampNanos)), arrivalNanos));
    }

    long place(double nextStampNanos, long arrivalNanos) {
        if (!tied || restartsWith(nextStampNanos, arrivalNanos)) {
            boolean first = lastNanos == 0 && !tied;
            tied = true;
            tiedAtNanos = arrivalNanos;
            lastNanos = first ? arrivalNanos : Math.max(lastNanos, arrivalNanos);
        } else {
            lastNanos += Math.round(forward(nextStampNanos));
        }
        stampNanos = nextStampNanos;
        return lastNanos;
    }

    private double forward(double nextStampNanos) {
        double step = nextStampNanos - stampNanos;
        if (step >= 0 || Double.isInfinite(wrapsAtNanos)) {
            return step;
        }
        double wrapped = step + wrapsAtNanos;
        return wrapped < wrapsAtNanos / 2 ? wrapped : step;
    }

    private boolean isInFuture(long placedNanos, long arrivalNanos) {
        double allowed = FUTURE_ALLOWED_NANOS + FASTEST_CLOCK * (arrivalNanos - tiedAtNanos);
        return placedNanos - arrivalNanos > allowed;
    }
}
