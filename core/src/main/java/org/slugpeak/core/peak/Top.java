package org.slugpeak.core.peak;

import java.util.Arrays;

/**
 * The height of the maximum of one stretch, from the highest mean of every length. The highest of several short means is too
 * high by chance; a long mean is too low because the top is round. The longest that agrees with all shorter ones is taken
 * (Lepski, On a problem of adaptive estimation in Gaussian white noise, Theory Probab. Appl. 35 (1990) 454).
 *
 * <p>What a mean loses by the roundness goes as the square of its length. So the highest means M over L and over 2 L give the
 * height without that loss: M(L) + (M(L) - M(2 L)) / 3 (Richardson, Phil. Trans. A 210 (1911) 307). Half of the longer mean is
 * the shorter one; therefore this has {@value #EXTRAPOLATED} of the sigma of M(L).
 *
 * <p>The roundness also says how many means compete for being the highest: moved by j lengths a mean loses 4 j² times
 * M(L) - M(2 L), and those compete that lose less than their sigma. What the greatest of so many normal deviates is expected to be
 * is taken off.
 *
 * <p>Between two readings of a slow meter the top may be higher than any of them; so once it is behind, its height may be above all that
 * was seen. While the reading still rises it is not.
 */
final class Top {

    /** sqrt(16/9 + 1/18 - 4/9): 4/3 of the shorter mean less 1/3 of the longer one, half of which is the shorter one. */
    private static final double EXTRAPOLATED = 1.18;
    /** A longer mean disagrees when it is lower by more than so many sigma of the shorter one. */
    private static final double AGREE = 2;
    /**
     * The top of a resonance is a parabola only near its middle. Where M(L) - M(2 L) is D of the level, what has been made of the two is
     * still low by 1.2 D² of it; a mean is not used where that is more than an eighth of its sigma.
     */
    private static final double NO_PARABOLA = 8 * 1.2;
    /** Nor does it agree when it is higher by so many: then the hand did not cross the top but stopped there. */
    private static final double TOO_HIGH = 2;
    /** What takes longer than this is no hand crossing a top. */
    private static final double LONGEST_SECONDS = 3;
    /** Part of a level by which sums of the same readings may differ. */
    static final double ROUNDING = 1e-12;
    /** These many octaves are used however slow the meter is. */
    private static final int ALWAYS = 2;
    /** A window of 2^n blocks is looked at after every 2^(n - {@value}) blocks: by then it has changed by a sixteenth. */
    private static final int LOOKS_PER_WINDOW_LOG2 = 4;
    /** The greatest of 1, 2, 4 ... 256 normal deviates: Tippett, Biometrika 17 (1925) 364. */
    private static final double[] GREATEST_OF_POWERS_OF_TWO = {
        0, 0.5642, 1.0294, 1.4236, 1.7660, 2.0697, 2.3437, 2.5944, 2.8269
    };
    /** Slow noise has time for about two independent values across a top. */
    private static final double GREATEST_SLOW = GREATEST_OF_POWERS_OF_TWO[1];

    private final Front front;
    private final double[] high = new double[Pyramid.OCTAVES];
    /** Means above these are higher, and not by rounding alone. */
    private final double[] above = new double[Pyramid.OCTAVES];

    private final long[] highNanos = new long[Pyramid.OCTAVES];
    private final double[] round = new double[Pyramid.OCTAVES];
    private int octaves;
    private long age;
    private double reached;
    private boolean behind;
    private boolean stale;
    private long changes;
    private double value;
    private double sigma;
    private long atNanos;

    Top(Front front) {
        this.front = front;
        forget();
    }

    /**
     * Looks at the newest block.
     *
     * @param smoothed the smoothed reading
     */
    void look(double smoothed) {
        Pyramid pyramid = front.pyramid;
        age++;
        int filled = Math.min(Pyramid.OCTAVES, Long.SIZE - Long.numberOfLeadingZeros(Math.min(age, pyramid.blocks())));
        int due = Math.min(filled, LOOKS_PER_WINDOW_LOG2 + 1 + Long.numberOfTrailingZeros(age));
        for (int octave = 0; octave < due; octave++) {
            if (pyramid.mean(octave) > above[octave]) {
                rise(octave, pyramid);
            }
        }
        boolean rises = !(pyramid.mean(0) < high[0]);
        if (behind == rises) {
            behind = !rises;
            stale = true;
            changes++;
        }
        if (!front.isBehind() && (Double.isNaN(reached) || isHigher(smoothed, reached))) {
            reached = smoothed;
            stale = true;
            changes++;
        }
    }

    private void rise(int octave, Pyramid pyramid) {
        high[octave] = pyramid.mean(octave);
        above[octave] = high[octave] + ROUNDING * Math.abs(high[octave]);
        highNanos[octave] = pyramid.middleNanos(octave);
        octaves = Math.max(octaves, octave + 1);
        stale = true;
        changes++;
    }

    private static boolean isHigher(double mean, double than) {
        return mean - than > ROUNDING * Math.abs(than);
    }

    private void judge() {
        stale = false;
        measureRoundness();
        Noise noise = front.noise;
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (int octave = 0; octave < octaves && isUsed(octave); octave++) {
            double height = sure(octave);
            if (height < least || height > most) {
                return;
            }
            double white = noise.white(octave, high[octave]);
            value = behind ? height : Math.min(height, reached);
            sigma = noise.sigma(octave, high[octave]) + (whiteFactor(octave) - 1) * white;
            least = Math.max(least, height - AGREE * sigma);
            most = Math.min(most, height + TOO_HIGH * sigma);
            if (octave == 0 || high[octave] > front.pyramid.mean(octave)) {
                // The highest is behind; where a mean still rises, a shorter one knows the time better.
                atNanos = highNanos[octave];
            }
        }
    }

    private boolean isUsed(int octave) {
        if (octave == 0 || octave + 1 == octaves) {
            return isAllowed(octave);
        }
        double lost = lost(octave);
        double white = front.noise.white(octave, high[octave]);
        return NO_PARABOLA * lost * (lost / Math.abs(high[octave])) <= white && isAllowed(octave);
    }

    private boolean isAllowed(int octave) {
        return octave < ALWAYS || front.pace.blockSeconds() * Pyramid.length(octave) <= LONGEST_SECONDS;
    }

    /** How much a block would lose by the roundness, as far as the means of an octave and longer ones tell. */
    private void measureRoundness() {
        double least = Double.POSITIVE_INFINITY;
        for (int octave = octaves - 1; octave >= 0; octave--) {
            if (octave + 1 < octaves) {
                least = Math.min(least, Math.max(0, high[octave] - high[octave + 1]) / square(octave));
            }
            round[octave] = least;
        }
    }

    /** M(L) - M(2 L) at an octave. */
    private double lost(int octave) {
        return round[octave] * square(octave);
    }

    private static double square(int octave) {
        return 1 << (2 * octave);
    }

    private double whiteFactor(int octave) {
        return octave + 1 < octaves ? EXTRAPOLATED : 1;
    }

    /** The height that an octave shows, less what it is too high by chance. */
    private double sure(int octave) {
        double height = octave + 1 < octaves ? high[octave] + (high[octave] - high[octave + 1]) / 3 : high[octave];
        double white = front.noise.white(octave, high[octave]);
        double byChance = greatest(competing(octave, white)) * whiteFactor(octave) * white;
        return height - byChance - GREATEST_SLOW * front.noise.excess(octave);
    }

    /** How many means compete for being the highest: all there are where the top is flat. */
    private double competing(int octave, double white) {
        double most = Math.min(1L << (GREATEST_OF_POWERS_OF_TWO.length - 1), Math.max(1, age >> octave));
        double lost = lost(octave);
        return lost > 0 ? Math.min(1 + Math.sqrt(white / lost), most) : most;
    }

    private static double greatest(double means) {
        int power = Math.getExponent(means);
        double of = GREATEST_OF_POWERS_OF_TWO[power];
        if (power + 1 == GREATEST_OF_POWERS_OF_TWO.length) {
            return of;
        }
        return of + (Math.scalb(means, -power) - 1) * (GREATEST_OF_POWERS_OF_TWO[power + 1] - of);
    }

    void forget() {
        Arrays.fill(above, Double.NEGATIVE_INFINITY);
        octaves = 0;
        age = 0;
        reached = Double.NaN;
        behind = false;
        value = Double.NaN;
        sigma = Double.NaN;
        stale = false;
    }

    private void judgeIfStale() {
        if (stale) {
            judge();
        }
    }

    /** Grows whenever the value may have changed. */
    long changes() {
        return changes;
    }

    /** The value is never above this: means are not above the highest block, nor below the highest of the longest mean. */
    double most() {
        return octaves == 0 ? Double.NaN : high[0] + (high[0] - high[octaves - 1]) / 3;
    }

    double value() {
        judgeIfStale();
        return value;
    }

    double sigma() {
        judgeIfStale();
        return sigma;
    }

    long atNanos() {
        judgeIfStale();
        return atNanos;
    }
}
