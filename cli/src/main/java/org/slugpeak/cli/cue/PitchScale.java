package org.slugpeak.cli.cue;

/**
 * Where a reading stands in pitch. Level goes to pitch and never to loudness, because a step of level is heard from about
 * 1 dB up and a step of pitch from about 1 percent, a sixth of a semitone (E. Zwicker, H. Fastl, Psychoacoustics, ch. 7). Higher
 * is nearer to what is sought, whether that is a peak, a dip or a zero.
 *
 * <p>Below the best an octave is {@value #FINE_DB_PER_OCTAVE} dB within {@value #FINE_WITHIN_DB} dB of it and
 * {@value #COARSE_DB_PER_OCTAVE} dB beyond, so a tenth of a decibel is 40 and 20 cents. The best itself climbs by an octave
 * for {@value #COARSE_DB_PER_OCTAVE} dB. Stateless.
 */
final class PitchScale {

    static final double LOWEST_HERTZ = 200;
    static final double HIGHEST_HERTZ = 2000;

    /** The best is never lower: a set under test plays 400 Hz, which would mask it. */
    static final double LOWEST_BEST_HERTZ = 700;

    /** Where the first best stands; leaves room to climb by 8 dB. */
    static final double FIRST_BEST_HERTZ = 800;

    /** The steady tone that a zero is compared with. */
    static final double ZERO_HERTZ = 1000;

    static final double FINE_WITHIN_DB = 1;
    static final double FINE_DB_PER_OCTAVE = 3;
    static final double COARSE_DB_PER_OCTAVE = 6;

    /** Below this fraction of the largest swing a zero is spread out, above it drawn together. */
    private static final double ZERO_KNEE = 0.02;

    /** Makes the largest swing stand just above the lowest pitch. */
    private static final double ZERO_OCTAVES_PER_DOUBLING = 0.4;

    private PitchScale() {}

    /**
     * How far below the best a reading sounds. One that is better than the best is not taken for the best yet: it stands where
     * the best will stand.
     *
     * @param distanceDb on the wrong side of the best, dB; negative where the reading is better
     * @return octaves; negative above the best
     */
    static double octavesBelowBest(double distanceDb) {
        if (distanceDb < 0) {
            return distanceDb / COARSE_DB_PER_OCTAVE;
        }
        double fine = Math.min(distanceDb, FINE_WITHIN_DB) / FINE_DB_PER_OCTAVE;
        double coarse = Math.max(0, distanceDb - FINE_WITHIN_DB) / COARSE_DB_PER_OCTAVE;
        return fine + coarse;
    }

    /**
     * The pitch of a reading.
     *
     * @param bestHertz pitch of the best
     * @param distanceDb on the wrong side of the best, dB; negative where the reading is better
     * @return Hz, within the range
     */
    static double hertz(double bestHertz, double distanceDb) {
        return within(bestHertz * Math.pow(2, -octavesBelowBest(distanceDb)));
    }

    /**
     * The pitch of a reading whose zero is sought.
     *
     * @param fractionOfSwing magnitude over the largest magnitude seen, 0 to 1
     * @return Hz, within the range
     */
    static double zeroHertz(double fractionOfSwing) {
        double doublings = Math.log1p(fractionOfSwing / ZERO_KNEE) / Math.log(2);
        return within(ZERO_HERTZ * Math.pow(2, -ZERO_OCTAVES_PER_DOUBLING * doublings));
    }

    private static double within(double hertz) {
        return Math.max(LOWEST_HERTZ, Math.min(HIGHEST_HERTZ, hertz));
    }
}
