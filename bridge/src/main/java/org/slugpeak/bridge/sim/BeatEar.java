package org.slugpeak.bridge.sim;

import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.ReadingTaken;

/**
 * Hears how fast the tone of the reading beats with the tone of the best: the distance between them, as an ear has it that
 * listens for half a second. Around a zero, where there is no best, it is an eye on the needle: a hundredth of its swing counts as
 * four hundredths of a decibel. One thread at a time.
 */
final class BeatEar {

    /**
     * Slower than this a beat is not told from none within half a second, dB: at 800 to 1000 Hz and 3 dB an octave two
     * hundredths are four beats a second.
     */
    private static final double STILL_BEATS_DB = 0.02;

    /** The beat has grown quicker by so much, dB: it went the wrong way. */
    private static final double WORSE_DB = 0.04;

    private static final double LISTENS_SECONDS = 0.25;

    /** Half a hundredth of the swing is as near as a needle is read. */
    private static final double DB_OF_SWING = 4;

    private boolean zero;
    private double swing;

    private double distanceDb = Double.NaN;
    private double leastDb = Double.POSITIVE_INFINITY;
    private long lastNanos;

    /** What is sought from now on. */
    void seek(Seek sought) {
        zero = sought.signCounts();
    }

    boolean seeksZero() {
        return zero;
    }

    /** Another adjuster. */
    void begin() {
        swing = 0;
        forget();
    }

    /** A new tone: nothing is known of it. */
    void forget() {
        distanceDb = Double.NaN;
        leastDb = Double.POSITIVE_INFINITY;
    }

    void hear(ReadingTaken taken) {
        double size = Math.abs(taken.smoothed());
        swing = Double.isFinite(size) ? Math.max(swing, size) : swing;
        double db = zero ? DB_OF_SWING * size / swing : Math.abs(Decibels.of(taken.ofBest()));
        double seconds = (taken.tNanos() - lastNanos) / 1e9;
        lastNanos = taken.tNanos();
        if (!Double.isFinite(db)) {
            return;
        }
        double share = Double.isNaN(distanceDb) ? 1 : -Math.expm1(-seconds / LISTENS_SECONDS);
        distanceDb = share < 1 ? distanceDb + share * (db - distanceDb) : db;
        leastDb = Math.min(leastDb, distanceDb);
    }

    /** Whether there is still a beat. */
    boolean beats() {
        return distanceDb > STILL_BEATS_DB;
    }

    /** Whether the beat has become quicker; the next time it counts from here. */
    boolean takeWorse() {
        boolean worse = distanceDb > leastDb + WORSE_DB;
        if (worse) {
            leastDb = distanceDb;
        }
        return worse;
    }
}
