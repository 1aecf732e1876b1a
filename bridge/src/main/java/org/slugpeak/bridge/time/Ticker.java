package org.slugpeak.bridge.time;

/** Elapsed time. Implementations may be read by any thread. */
@FunctionalInterface
public interface Ticker {

    /**
     * The time now.
     *
     * @return nanoseconds on a monotonic axis whose origin has no meaning
     */
    long nowNanos();

    /**
     * The machine's own monotonic clock: the one place that reads it.
     *
     * @return a ticker over the system's clock
     */
    static Ticker system() {
        return System::nanoTime;
    }
}
