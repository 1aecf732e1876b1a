package org.slugpeak.core.level;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * By how much the level jumped while the generator was turned, though a hand may have gone on turning an adjuster: a line through the
 * readings before and one through those after, both taken at the middle of the time between, where a bend that goes on cancels.
 * Immutable.
 *
 * @param db decibels, negative for a fall
 * @param sigmaDb one sigma of it
 */
record LevelJump(double db, double sigmaDb) {

    /** Each of two settings of an attenuator that is right within 0.1 dB: 0.1 / sqrt 3 of an even spread, times sqrt 2. */
    private static final double ATTENUATOR_SIGMA_DB = 0.082;

    /** The law of a detector is between straight and square: what the signal does says so little of the reading. */
    private static final double LAWLESS_SHARE = 0.3;

    /** No attenuator that works errs by so much. */
    private static final double LIE_DB = 1.5;

    /** Whoever halves a level by eye makes 4.4 to 8 dB of it (made up): over the root of 12 of an even spread. */
    private static final double HAND_SIGMA_DB = 1.04;

    private static final double FAR_SIGMAS = 4;

    /**
     * What a change of slope times the time between may hide. A hand that goes on past a peak hides nothing, one that turns round just before or
     * after the gap half of it. Chosen on 200 seeds.
     */
    private static final double BEND_SHARE = 0.15;

    /** So long a hand turns on that reads nothing any more; common practice, no source. Afterwards it may hold still, or not. */
    private static final double REACTION_SECONDS = 0.7;

    /** Of what both slopes would make of the rest of the time, half is hidden at the most: 1 / sqrt 3 of that in an even spread. */
    private static final double HALT_SHARE = 0.29;

    /** Empty where there are too few readings. */
    static Optional<LevelJump> between(RecentReadings before, RecentReadings after, DoubleUnaryOperator straight) {
        DecibelLine from = before.line(straight);
        DecibelLine to = after.line(straight);
        if (!from.isKnown() || !to.isKnown()) {
            return Optional.empty();
        }
        double gapSeconds = (after.firstNanos() - before.lastNanos()) / 1e9;
        double middle = before.lastNanos() / 1e9 + gapSeconds / 2;
        double bendDb = BEND_SHARE * Math.abs(to.dbPerSecond() - from.dbPerSecond()) * gapSeconds;
        double turnedDbPerSecond = Math.abs(to.dbPerSecond()) + Math.abs(from.dbPerSecond());
        double haltDb = HALT_SHARE * turnedDbPerSecond * Math.max(0, gapSeconds - REACTION_SECONDS);
        double noiseDb = Math.hypot(from.sigmaDbAt(middle), to.sigmaDbAt(middle));
        return Optional.of(
                new LevelJump(to.dbAt(middle) - from.dbAt(middle), Math.hypot(noiseDb, Math.hypot(bendDb, haltDb))));
    }

    /**
     * What generator and readings say together, each as well as it is known; where they contradict each other the readings count.
     *
     * @param saidDb by how much the generator says that it was turned
     * @param lawful whether the detector's law is known, so that the readings are decibels of the signal
     */
    double togetherWith(double saidDb, boolean lawful) {
        double saidSigmaDb =
                lawful ? ATTENUATOR_SIGMA_DB : Math.max(ATTENUATOR_SIGMA_DB, LAWLESS_SHARE * Math.abs(saidDb));
        double apartDb = Math.abs(db - saidDb);
        boolean contradicts = apartDb > Math.max(LIE_DB, FAR_SIGMAS * Math.hypot(saidSigmaDb, sigmaDb));
        return contradicts ? db : weighed(saidDb, saidSigmaDb);
    }

    /**
     * What a person who was asked for a change made, who sees to it by eye.
     *
     * @param askedDb by how much the generator was to be turned
     */
    double madeByHand(double askedDb) {
        return weighed(askedDb, HAND_SIGMA_DB);
    }

    private double weighed(double saidDb, double saidSigmaDb) {
        double saidVariance = saidSigmaDb * saidSigmaDb;
        double share = saidVariance / (saidVariance + sigmaDb * sigmaDb);
        return share * db + (1 - share) * saidDb;
    }
}
