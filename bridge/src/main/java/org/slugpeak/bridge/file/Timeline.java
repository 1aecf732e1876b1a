package org.slugpeak.bridge.file;

/**
 * Keeps the times of a time column from running back. A line whose time is earlier than the one before is refused. If three
 * such lines follow each other in order, then the clock behind the column was set back, as by a board that was reset: from
 * there on time goes on from where it stood.
 *
 * <p>One thread at a time.
 */
final class Timeline {

    /** Times this far from the origin still leave the differences of any two within a long: 146 years. */
    private static final long LIMIT_NANOS = Long.MAX_VALUE / 2;

    private static final int ENOUGH = 3;

    private boolean begun;
    private long offset;
    private long placed;
    private long refused;
    private int refusedInOrder;

    /** What became of a time. */
    enum Step {
        /** It follows on. */
        ON,
        /** It runs back: the line is not to be used. */
        BACK,
        /** The clock was set back; this line is good again, but does not follow on. */
        RESTARTED,
        /** It is more than 146 years from the origin. */
        TOO_FAR
    }

    Step step(long nanos) {
        if (nanos > LIMIT_NANOS || nanos < -LIMIT_NANOS) {
            return Step.TOO_FAR;
        }
        long shifted = nanos + offset;
        if (!begun || shifted >= placed) {
            return place(shifted, Step.ON);
        }
        refusedInOrder = refusedInOrder > 0 && nanos >= refused ? refusedInOrder + 1 : 1;
        refused = nanos;
        if (refusedInOrder < ENOUGH) {
            return Step.BACK;
        }
        offset = placed - nanos;
        return place(placed, Step.RESTARTED);
    }

    /** Where the line was placed, after {@link Step#ON} or {@link Step#RESTARTED}. */
    long placedNanos() {
        return placed;
    }

    private Step place(long nanos, Step step) {
        if (nanos > LIMIT_NANOS) {
            return Step.TOO_FAR;
        }
        begun = true;
        placed = nanos;
        refusedInOrder = 0;
        return step;
    }
}
