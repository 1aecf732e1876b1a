package org.slugpeak.bridge.sound;

/**
 * Sets the device's clock, which is its count of samples, against the computer's. Blocks arrive late by a time that varies,
 * but never early; so the least lateness of a second tells how the clocks stand. It creeps by some parts in a million; a jump
 * means that the device has lost samples, of which the system says nothing.
 */
final class CaptureClock {

    private static final double NANOS = 1e9;
    private static final long LOOK_NANOS = 1_000_000_000L;
    private static final long LOSS_NANOS = 15_000_000L;
    private static final long CREEP_NANOS = 2_000_000L;

    private final double rateHz;
    private final long originNanos;
    private long frames;
    private long nextLook;
    private long leastLate = Long.MAX_VALUE;
    private long lateBefore;
    private boolean settled;
    private long shift;
    private long lost;

    CaptureClock(double rateHz, long originNanos) {
        this.rateHz = rateHz;
        this.originNanos = originNanos;
        this.nextLook = originNanos + LOOK_NANOS;
    }

    /** Takes note of a block; true when a second is over and {@link #shiftNanos()} and {@link #lostNanos()} are new. */
    boolean arrived(int blockFrames, long arrivedNanos) {
        frames += blockFrames;
        leastLate = Math.min(leastLate, arrivedNanos - originNanos - Math.round(frames / rateHz * NANOS));
        if (arrivedNanos < nextLook) {
            return false;
        }
        long change = settled ? leastLate - lateBefore : 0;
        lost = change > LOSS_NANOS ? change : 0;
        shift = lost > 0 || Math.abs(change) < CREEP_NANOS ? change : 0;
        lateBefore = leastLate;
        settled = true;
        leastLate = Long.MAX_VALUE;
        nextLook = arrivedNanos + LOOK_NANOS;
        return true;
    }

    /** By how much the stream's time has moved against its samples in that second. */
    long shiftNanos() {
        return shift;
    }

    /** How much of the audio was lost in that second; 0 for none. */
    long lostNanos() {
        return lost;
    }
}
