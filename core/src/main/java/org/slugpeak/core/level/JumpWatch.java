package org.slugpeak.core.level;

import org.slugpeak.core.decibel.Decibels;

/**
 * Sees a level that jumps by itself: stands, steps by 1.5 to 5.6 dB, stands again. Twice is a sign of a mica capacitor; a
 * larger step is the generator. One thread at a time.
 */
final class JumpWatch {

    private static final double LEAST_DB = 1.5;
    private static final double MOST_DB = 5.6;
    private static final double STANDING_SHARE = 0.03;
    private static final double JUDGE_SECONDS = 0.5;
    private static final int ENOUGH = 2;

    private final RecentReadings before = new RecentReadings(0.4);
    private final RecentReadings after = new RecentReadings(0.4);
    private boolean jumping;
    private long jumpNanos;
    private double levelBefore;
    private int jumps;
    private boolean told;

    void gap() {
        before.clear();
        after.clear();
        jumping = false;
    }

    /** Whether this reading makes the suspicion firm. */
    boolean accept(long tNanos, double magnitude) {
        if (jumping) {
            after.add(tNanos, magnitude);
            if (tNanos - jumpNanos > JUDGE_SECONDS * 1e9 && after.size() >= 5) {
                judge();
            }
        } else if (before.size() >= 5
                && sizeDb(before.last(0), magnitude) > LEAST_DB / 3
                && before.stands(STANDING_SHARE)) {
            jumping = true;
            jumpNanos = tNanos;
            levelBefore = before.median();
            after.clear();
        } else {
            before.add(tNanos, magnitude);
        }
        if (jumps >= ENOUGH && !told) {
            told = true;
            return true;
        }
        return false;
    }

    private void judge() {
        double size = sizeDb(levelBefore, after.median());
        if (after.stands(STANDING_SHARE) && size > LEAST_DB && size < MOST_DB) {
            jumps++;
        }
        jumping = false;
        before.clear();
    }

    private static double sizeDb(double from, double to) {
        return Math.abs(Decibels.of(Math.max(1e-9, to) / Math.max(1e-9, from)));
    }
}
