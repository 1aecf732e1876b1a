package org.slugpeak.bridge.testkit;

import java.util.concurrent.atomic.AtomicLong;
import org.slugpeak.bridge.time.Ticker;

/** A clock that stands still until it is moved. Any thread may use it. */
public final class ManualTicker implements Ticker {

    private final AtomicLong nowNanos;

    /**
     * A clock at a given time.
     *
     * @param nowNanos what it shows
     */
    public ManualTicker(long nowNanos) {
        this.nowNanos = new AtomicLong(nowNanos);
    }

    @Override
    public long nowNanos() {
        return nowNanos.get();
    }

    /**
     * Moves the clock on.
     *
     * @param nanos not negative
     */
    public void advance(long nanos) {
        nowNanos.addAndGet(nanos);
    }
}
