package org.slugpeak.cli.display;

import java.util.HashMap;
import java.util.Map;

/**
 * Keeps a voice calm. What has not been said for a while may be said at once; what keeps coming is said again only after a pause,
 * and the pause doubles as long as it keeps coming. One thread at a time.
 */
final class Calm {

    private static final long LONGEST_NANOS = 24_000_000_000L;

    private final long shortestNanos;
    private final Map<String, Said> said = new HashMap<>();

    /**
     * When something was said last.
     *
     * @param restless whether it has come again since, too soon
     */
    private record Said(long tNanos, long pauseNanos, boolean restless) {}

    Calm(long shortestNanos) {
        this.shortestNanos = shortestNanos;
    }

    /** Whether something of this kind may be said now; if so, it counts as said. */
    boolean lets(String kind, long tNanos) {
        Said last = said.getOrDefault(kind, new Said(tNanos - LONGEST_NANOS, 0, false));
        if (tNanos - last.tNanos < last.pauseNanos) {
            said.put(kind, new Said(last.tNanos, last.pauseNanos, true));
            return false;
        }
        long pauseNanos = last.restless ? Math.min(LONGEST_NANOS, 2 * last.pauseNanos) : shortestNanos;
        said.put(kind, new Said(tNanos, pauseNanos, false));
        return true;
    }

    /** Something else has begun: what is said of it is new. */
    void forget() {
        said.clear();
    }
}
