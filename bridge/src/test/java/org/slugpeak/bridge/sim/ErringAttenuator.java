package org.slugpeak.bridge.sim;

import java.util.SplittableRandom;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/**
 * An attenuator that gives another level than it says: all levels are off by one amount, and each by an amount of its own beside that,
 * always the same. Both lie evenly within their limits. Immutable.
 *
 * @param seed of its errors
 * @param levelDb limit of what all levels have in common, dB either way
 * @param stepDb limit of what each has beside that, dB either way
 */
record ErringAttenuator(long seed, double levelDb, double stepDb) {

    static final ErringAttenuator TRUE = new ErringAttenuator(0, 0, 0);

    /** Settings nearer to one another than this are the same position of its switches. */
    private static final double POSITION_DB = 0.1;

    /** What it gives where it says so many volts EMF. */
    double realVolts(double emfVolts) {
        long position = Math.round(Decibels.of(emfVolts) / POSITION_DB);
        double common = levelDb * even(seed);
        return emfVolts * Decibels.ratio(common + stepDb * even(seed * 1_000_003 + position));
    }

    private static double even(long seed) {
        return new SplittableRandom(seed).nextDouble() * 2 - 1;
    }

    /** What reaches the set of what was asked for. */
    SessionRecord fed(SessionRecord record) {
        if (record instanceof Request.SetInput it) {
            double real = realVolts(it.setting().emfVolts());
            return new Request.SetInput(
                    it.tNanos(), it.setting().standingAt(it.setting().frequencyHz(), real), it.unasked(), it.mark());
        }
        return record;
    }

    /** The most that it may be off, dB. */
    double mostDb() {
        return levelDb + stepDb;
    }
}
