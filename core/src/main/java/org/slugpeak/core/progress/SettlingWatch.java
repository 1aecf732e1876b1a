package org.slugpeak.core.progress;

import org.slugpeak.core.decibel.Decibels;

/**
 * Tells, from the reading alone, when what a step asks for has been set: generator, dial, and what a hand does in a set that is
 * off meanwhile. One thread at a time.
 */
final class SettlingWatch {

    /** The reading stands when it moves less than this, dB, for {@link #STAND_NANOS}. */
    private static final double STAND_DB = 0.5;

    private static final long STAND_NANOS = 1_500_000_000L;

    /** A generator or dial that has been set shows in the reading by this much, dB. */
    private static final double CHANGE_DB = 1;

    /** Where nothing shows, a reading that stands for so long is taken for ready. */
    private static final long PATIENCE_NANOS = 15_000_000_000L;

    /** The same where a hand goes into the set: off, discharge, clip, warm up, and nobody is to hurry. */
    private static final long OFF_PATIENCE_NANOS = 600_000_000_000L;

    /** A set that is off reads less than this part of what it read before; without a signal it still has its rest. */
    private static final double OFF_SHARE = 0.05;

    private final SteadyWatch standing = new SteadyWatch(STAND_NANOS, STAND_DB);
    private final double levelBefore;
    private final long sinceNanos;
    private final boolean handInSet;
    private boolean mustChange;

    /**
     * Something has been asked for.
     *
     * @param levelNow what was read meanwhile
     * @param showsInReading whether it is likely to change the reading
     * @param inSet whether a hand goes into the set for it
     */
    SettlingWatch(long tNanos, double levelNow, boolean showsInReading, boolean inSet) {
        levelBefore = levelNow;
        sinceNanos = tNanos;
        handInSet = inSet;
        mustChange = showsInReading;
    }

    /**
     * Whether it is done; {@code seeksZero}: a small reading is what is wanted, and does not tell that the set is off. Around a zero
     * nothing stands still in decibels, so it is compared with what was read before, and where that was nothing too, time will do.
     */
    boolean isDone(long tNanos, double level, boolean seeksZero) {
        standing.see(tNanos, seeksZero ? Math.abs(level) + Math.abs(levelBefore) : level);
        double ratio = Math.abs(level / levelBefore);
        mustChange = mustChange && !(Math.abs(Decibels.of(ratio)) > CHANGE_DB);
        boolean off = handInSet && !seeksZero && ratio < OFF_SHARE;
        boolean patient = tNanos - sinceNanos >= (handInSet ? OFF_PATIENCE_NANOS : PATIENCE_NANOS);
        boolean stands = standing.isSteady() || (seeksZero && patient);
        return stands && (patient || !(mustChange || off));
    }
}
