package org.slugpeak.cli.display;

import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.slugpeak.bridge.time.Ticker;

/**
 * Whether the terminal that lines are written to is still there. Whoever reads no keys hears nothing of its end, and not every end
 * comes with a signal. One thread at a time.
 */
final class TerminalLife {

    /** A question to the system costs little, but nothing is gained by asking after each reading. */
    private static final long BETWEEN_LOOKS_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final BooleanSupplier isTerminal;
    private final Ticker ticker;
    private final boolean watched;
    private long lookedNanos;
    private boolean gone;

    /**
     * Watches what is a terminal now; what is none never goes.
     *
     * @param isTerminal asks the system
     * @param ticker says when to ask again
     */
    TerminalLife(BooleanSupplier isTerminal, Ticker ticker) {
        this.isTerminal = isTerminal;
        this.ticker = ticker;
        this.watched = isTerminal.getAsBoolean();
        this.lookedNanos = ticker.nowNanos();
    }

    boolean isGone() {
        long nowNanos = ticker.nowNanos();
        if (watched && nowNanos - lookedNanos >= BETWEEN_LOOKS_NANOS) {
            lookedNanos = nowNanos;
            gone = !isTerminal.getAsBoolean();
        }
        return gone;
    }
}
