package org.slugpeak.core.level;

import org.slugpeak.core.decibel.Decibels;

/** Says when there is too little signal over noise to place a peak within 0.1 dB. One thread at a time. */
final class NoiseWatch {

    /** What the hand can wait for while turning. */
    private static final double AVERAGE_SECONDS = 0.5;

    private static final long ENOUGH_NANOS = 3_000_000_000L;
    private static final double PEAK_ERROR_DB = 0.1;
    private static final double GOOD_AGAIN_DB = 0.07;
    private static final long BETWEEN_NANOS = 30_000_000_000L;
    /** Spares a division by zero. */
    private static final double LEAST_LEVEL = 1e-12;

    private static final double DB_PER_SHARE = 20 / Math.log(10);

    private final LevelListener listener;
    private final RecentReadings recent = new RecentReadings(4);
    private boolean said;
    private long saidNanos = Long.MIN_VALUE / 2;
    private long lookedNanos = Long.MIN_VALUE / 2;

    NoiseWatch(LevelListener listener) {
        this.listener = listener;
    }

    void gap() {
        recent.clear();
    }

    void accept(long tNanos, double magnitude) {
        recent.add(tNanos, magnitude);
        if (tNanos - lookedNanos < 500_000_000L || recent.size() < 12 || recent.spannedNanos() < ENOUGH_NANOS) {
            return;
        }
        lookedNanos = tNanos;
        if (!said && errorDb(recent.mostNoise(), Math.max(LEAST_LEVEL, recent.lowest())) <= PEAK_ERROR_DB) {
            return; // as nearly always: spares both medians
        }
        double noise = recent.noise();
        double level = Math.max(LEAST_LEVEL, recent.median());
        double errorDb = errorDb(noise, level);
        if (!said && errorDb > PEAK_ERROR_DB && tNanos - saidNanos > BETWEEN_NANOS) {
            said = true;
            saidNanos = tNanos;
            listener.weak(tNanos, Decibels.of(level / noise));
        } else if (errorDb < GOOD_AGAIN_DB) {
            said = false;
        }
    }

    private double errorDb(double noise, double level) {
        double perSecond = (recent.size() - 1) / (recent.spannedNanos() / 1e9);
        double averaged = noise / Math.sqrt(Math.max(1, perSecond * AVERAGE_SECONDS));
        return DB_PER_SHARE * averaged / level;
    }
}
