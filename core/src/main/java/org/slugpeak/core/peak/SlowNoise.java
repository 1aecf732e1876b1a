package org.slugpeak.core.peak;

/**
 * Noise that does not average away as white noise does: hum beats, and flicker, whose power goes as one over the frequency.
 *
 * <p><b>Definition.</b> What the second differences of movements between neighbouring means show beyond white noise, for means of every length.
 * The <i>excess</i> of a length is the most that it or a longer one shows. <i>Flicker</i> is what {@value #OCTAVES} lengths in a row, each twice the one before, have
 * in common: a beat stands out in one or two of them.
 *
 * <p><b>Edges.</b> Nothing is learnt where the level moves far, unless nothing but noise is read, or where the hand starts or stops. Before a record of {@value #KNOWN_SECONDS} s the noise may be as large
 * as it ever is.
 *
 * <p><b>Algorithm.</b> A winsorised scale for each length. Constant cost a block, on average.
 *
 * <p><b>Threads.</b> One at a time.
 *
 * <p><b>References.</b> von Neumann et al., Ann. Math. Statist. 12 (1941) 153, taken two orders further; how far flicker takes a mean was simulated
 * (docs/peak-finder.md).
 */
final class SlowNoise {

    /** Windows: several periods of a beat. */
    private static final double SLOW_MEMORY = 24;
    /** A longer window shows more than white noise only beyond the statistical spread of its scale. */
    private static final double SPREAD = 1.4;
    /** Uneven turning looks like slow noise in proportion to how far the reading moves meanwhile. */
    private static final double UNEVEN_TURNING = 0.03;
    /**
     * Slow noise shows only where the reading moves, during four means, by less than this part of itself times one second over the
     * length of a mean: the longer a mean, the more starts and stops of the hand fall into four of them.
     */
    private static final double FARTHEST = 0.032;
    /** Of three movements the same way, one that is less than this part of their sum: the hand starts or stops. */
    private static final double STOPPED = 0.1;
    /** Slow noise is looked for in windows up to this long; what is slower is drift. */
    private static final double SLOWEST_SECONDS = 1;
    /** On a slow meter windows of sixteen readings are looked at, too. */
    private static final int SLOW_ALWAYS = 4;
    /** Hum beats and flicker of a sound set stay below this part of the reading; more is the hand. */
    private static final double MOST_SLOW = 0.01;
    /** So much of it there may be as long as nothing is known. */
    private static final double SLOW_AT_FIRST = 0.03;
    /** How far bounded slow noise (a beat) takes a level, in its sigma. */
    private static final double BOUNDED = 3;
    /**
     * How far flicker takes a mean below the highest of the means before it, in sigma of its third differences, about once in ten hours: 17 in a
     * simulation of three hours, and what is found of the sigma is 0.75 of it, since white noise is taken off.
     */
    private static final double FLICKER = 22;
    /** Deviations of the longest means; with fewer, chance makes white noise look like flicker. */
    private static final double FLICKER_KNOWN = 20;
    /** From look to look: flicker that was seen fades within some minutes. */
    private static final double FADES = 1 - 1.0 / 128;
    /** Flicker is alike in so many octaves in a row; a beat stands out in one. */
    private static final int OCTAVES = 3;
    /** The least of them over the greatest: 0.06 for a beat, 1 for flicker, less what chance makes of it. */
    private static final double ALIKE = 0.35;
    /** So long a record shows whether there is slow noise. */
    private static final double KNOWN_SECONDS = 2;

    private static final double FEW = 4;

    private final Spread[] scales = new Spread[Pyramid.OCTAVES];
    private final double[] excess = new double[Pyramid.OCTAVES];
    /** Of the length of a mean in blocks. */
    private final double[] root = new double[Pyramid.OCTAVES];

    private boolean known;
    private boolean alone;
    /** The greatest while nothing but noise was read: it goes on when a signal comes, as long as it is not long ago. */
    private double seenAlone;

    private double flicker;
    private int longest;

    SlowNoise() {
        for (int octave = 0; octave < Pyramid.OCTAVES; octave++) {
            scales[octave] = new Spread(SLOW_MEMORY);
            root[octave] = Math.sqrt(Pyramid.length(octave));
        }
    }

    /** How long the noise has been watched. */
    void lasted(double seconds) {
        known |= seconds >= KNOWN_SECONDS;
    }

    /** Whether nothing but noise is read: what moves then is no hand, and slow noise is as large as it shows. */
    void alone(boolean isAlone) {
        alone = isAlone;
    }

    /** Takes the newest block of the pyramid, and one sigma of its white noise. */
    void add(Pyramid pyramid, double blockSeconds, double white) {
        boolean changed = false;
        for (int octave = 1; octave < Pyramid.OCTAVES && pyramid.has(octave, 4); octave++) {
            int length = Pyramid.length(octave);
            if ((pyramid.blocks() & (length / 2 - 1)) != 0 || !isLookedAt(octave, blockSeconds * length)) {
                break;
            }
            double deviation = deviation(pyramid, octave, blockSeconds * length);
            if (!Double.isNaN(deviation)) {
                scales[octave].add(deviation, 0);
                longest = Math.max(longest, octave);
                changed = true;
            }
        }
        if (changed) {
            double limit = limit(pyramid.mean(0));
            findExcess(limit, white);
            seenAlone = alone ? excess[0] : FADES * seenAlone;
            flicker = Math.min(Math.max(findFlicker(white), FADES * flicker), limit);
        }
    }

    private double limit(double reading) {
        return alone ? Double.POSITIVE_INFINITY : Math.max(seenAlone, MOST_SLOW * Math.abs(reading));
    }

    private static boolean isLookedAt(int octave, double seconds) {
        return octave <= SLOW_ALWAYS || seconds <= SLOWEST_SECONDS;
    }

    /** What may be slow noise in four means; NaN where they move too far, or where the hand starts or stops. */
    private double deviation(Pyramid pyramid, int octave, double seconds) {
        int n = Pyramid.length(octave);
        double newest = pyramid.mean(octave) - pyramid.mean(octave, n);
        double middle = pyramid.mean(octave, n) - pyramid.mean(octave, 2 * n);
        double oldest = pyramid.mean(octave, 2 * n) - pyramid.mean(octave, 3 * n);
        double path = Math.abs(newest) + Math.abs(middle) + Math.abs(oldest);
        double least = Math.min(newest, Math.min(middle, oldest));
        double most = Math.max(newest, Math.max(middle, oldest));
        double none = Noise.STEADIEST * Math.abs(pyramid.mean(0));
        boolean oneWay = least >= -none || most <= none;
        boolean stops = oneWay && Math.min(Math.abs(least), Math.abs(most)) < STOPPED * path - none;
        boolean tooFar = !alone && path * seconds > FARTHEST * Math.abs(pyramid.mean(0));
        if (stops || tooFar) {
            return Double.NaN;
        }
        return Math.max(0, Math.abs(newest - 2 * middle + oldest) / Noise.WEIGHTS - UNEVEN_TURNING * path);
    }

    private void findExcess(double limit, double white) {
        double most = 0;
        for (int octave = longest; octave >= 0; octave--) {
            if (scales[octave].seen() >= FEW) {
                most = Math.max(most, scales[octave].sigma() - SPREAD * white / root[octave]);
            }
            excess[octave] = Math.min(most, limit);
        }
    }

    /** What the longest means have in common beyond white noise; 0 where one of them stands out. */
    private double findFlicker(double white) {
        if (longest <= OCTAVES || scales[longest].seen() < FLICKER_KNOWN) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int octave = longest - OCTAVES + 1; octave <= longest; octave++) {
            double sigma = scales[octave].sigma();
            double byWhite = white / root[octave];
            if (!(sigma > SPREAD * byWhite)) {
                return 0;
            }
            double beyond = Math.sqrt((sigma - byWhite) * (sigma + byWhite));
            least = Math.min(least, beyond);
            most = Math.max(most, beyond);
        }
        return least >= ALIKE * most ? least : 0;
    }

    /** What means of this length and longer show beyond white noise: one sigma. */
    double excess(int octave) {
        return excess[octave];
    }

    /** How far slow noise alone may take a mean of this length, near a reading. */
    double reach(int octave, double reading) {
        if (!known) {
            return SLOW_AT_FIRST * Math.abs(reading);
        }
        double bounded = BOUNDED * excess[octave];
        double flickering = FLICKER * flicker;
        return bounded > flickering ? bounded : flickering;
    }
}
