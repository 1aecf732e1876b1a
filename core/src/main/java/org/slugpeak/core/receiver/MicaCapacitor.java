package org.slugpeak.core.receiver;

import java.util.SplittableRandom;

/**
 * A mica capacitor whose silver creeps: every 20 to 60 s it jumps to another value, enough for 2 to 5 dB. The figures are
 * invented. One thread at a time.
 */
final class MicaCapacitor {

    private final SplittableRandom random;
    private long nextNanos = -1;
    private double fraction;

    MicaCapacitor(SplittableRandom random) {
        this.random = random;
    }

    void step(long tNanos) {
        if (nextNanos < 0) {
            nextNanos = tNanos + pause();
        } else if (tNanos >= nextNanos) {
            double size = random.nextDouble(0.022, 0.035);
            fraction = fraction == 0 ? size : 0;
            nextNanos = tNanos + pause();
        }
    }

    private long pause() {
        return (long) (random.nextDouble(20, 60) * 1e9);
    }

    /** By how much it is too large, as a fraction: acts on the resonance as the same fraction of inductance does. */
    double fraction() {
        return fraction;
    }
}
