package org.slugpeak.core.progress;

/**
 * Notices that an adjuster was told to turn back or to stop, that nothing moves any more, and that it was not held all the same:
 * the user waits for a word that cannot come, because the best is out of reach or the hand stopped short of it. One for each
 * time that an adjuster is begun. One thread at a time.
 */
final class StuckWatch {

    /** What to do about it. */
    enum Finding {
        NOTHING,
        /** Say what is missing. */
        TELL,
        /** Forget that best. */
        BEGIN_AGAIN
    }

    /** Twice the dwell, after which nothing is held any more without turning, and the time to have read what is said. */
    private static final long TELL_NANOS = 6_000_000_000L;

    /** Nobody who is turning an adjuster rests for so long. */
    private static final long FORGET_NANOS = 20_000_000_000L;

    /** A reading that moves more than this is being turned, dB. */
    private static final double MOVES_DB = 0.5;

    private final SteadyWatch shortly = new SteadyWatch(TELL_NANOS, MOVES_DB);
    private final SteadyWatch atLength = new SteadyWatch(FORGET_NANOS, MOVES_DB);
    private boolean heard;
    private boolean told;

    /** The finder has said to turn back, or to stop. */
    void verdict() {
        heard = true;
        told = false;
        shortly.forget();
        atLength.forget();
    }

    /** A trusted reading of an adjuster that is not held. */
    Finding see(long tNanos, double smoothed) {
        if (!heard) {
            return Finding.NOTHING;
        }
        shortly.see(tNanos, smoothed);
        atLength.see(tNanos, smoothed);
        if (atLength.isSteady()) {
            return Finding.BEGIN_AGAIN;
        }
        if (!told && shortly.isSteady()) {
            told = true;
            return Finding.TELL;
        }
        return Finding.NOTHING;
    }
}
