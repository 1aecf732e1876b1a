package org.slugpeak.bridge.sim;

import java.util.concurrent.locks.LockSupport;
import org.slugpeak.bridge.time.Ticker;

/** How fast simulated time may run. One thread at a time. */
public interface Tempo {

    /**
     * How far the simulation may have come by now.
     *
     * @return nanoseconds of simulated time since the first call
     */
    long dueNanos();

    /**
     * Lets time pass until the simulation may go on.
     *
     * @param simulatedNanos how much of it is missing; positive
     * @param atMostNanos of real time; 0 or more
     */
    void await(long simulatedNanos, long atMostNanos);

    /**
     * As fast as the machine can, for tests and tables.
     *
     * @return a pace without limits
     */
    static Tempo unlimited() {
        return new Tempo() {
            @Override
            public long dueNanos() {
                return Long.MAX_VALUE;
            }

            @Override
            public void await(long simulatedNanos, long atMostNanos) {}
        };
    }

    /**
     * As fast as life, or a number of times faster.
     *
     * @param ticker the clock
     * @param speed times life; positive
     * @return that pace
     */
    static Tempo ofClock(Ticker ticker, double speed) {
        return new ClockTempo(ticker, speed);
    }

    /** Follows a clock. */
    final class ClockTempo implements Tempo {

        private final Ticker ticker;
        private final double speed;
        private boolean begun;
        private long originNanos;

        private ClockTempo(Ticker ticker, double speed) {
            this.ticker = ticker;
            this.speed = speed;
        }

        @Override
        public long dueNanos() {
            long nowNanos = ticker.nowNanos();
            if (!begun) {
                begun = true;
                originNanos = nowNanos;
            }
            return (long) ((nowNanos - originNanos) * speed);
        }

        @Override
        public void await(long simulatedNanos, long atMostNanos) {
            LockSupport.parkNanos(Math.min(atMostNanos, (long) (simulatedNanos / speed) + 1));
        }
    }
}
