package org.slugpeak.core.peak;

import java.util.function.IntToDoubleFunction;

/** Blocks of 20 ms that go straight into what measures them, without despiking. */
final class Blocks {

    static final double SECONDS = 0.02;
    private static final long NANOS = 20_000_000;

    final Front front = new Front();
    private long tNanos;

    /** Adds so many blocks; says after each that it is there. */
    Blocks add(int count, IntToDoubleFunction level, Runnable afterEach) {
        for (int i = 0; i < count; i++) {
            tNanos += NANOS;
            front.pace.look(SECONDS);
            front.pyramid.add(tNanos, level.applyAsDouble(i));
            front.noise.add(front.pyramid, SECONDS);
            afterEach.run();
        }
        return this;
    }

    Blocks add(int count, IntToDoubleFunction level) {
        return add(count, level, () -> {});
    }

    long nowNanos() {
        return tNanos;
    }

    /** A resonance of height one: its top is at this block, its half-width takes so many blocks. */
    static IntToDoubleFunction resonance(int topAt, double halfWidth) {
        return i -> 1 / Math.hypot(1, (i - topAt) / halfWidth);
    }
}
