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
    /** These many levels are used however slow the meter is. */
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
    private final double[] high = new double[Pyramid.LEVELS];
    /** Means above these are higher, and not by rounding alone. */
    private final double[] above = new double[Pyramid.LEVELS];

    private final long[] highNanos = new long[Pyramid.LEVELS];
    private final double[] round = new double[Pyramid.LEVELS];
    private int levels;
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
        int filled = Math.min(Pyramid.LEVELS, Long.SIZE - Long.numberOfLeadingZeros(Math.min(age, pyramid.blocks())));
        int due = Math.min(filled, LOOKS_PER_WINDOW_LOG2 + 1 + Long.numberOfTrailingZeros(age));
        for (int level = 0; level < due; level++) {
            if (pyramid.mean(level) > above[level]) {
                rise(level, pyramid);
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

    private void rise(int level, Pyramid pyramid) {
        high[level] = pyramid.mean(level);
        above[level] = high[level] + ROUNDING * Math.abs(high[level]);
        highNanos[level] = pyramid.middleNanos(level);
        levels = Math.max(levels, level + 1);
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
        for (int level = 0; level < levels && isUsed(level); level++) {
            double height = sure(level);
            if (height < least || height > most) {
                return;
            }
            double white = noise.white(level, high[level]);
            value = behind ? height : Math.min(height, reached);
            sigma = noise.sigma(level, high[level]) + (whiteFactor(level) - 1) * white;
            least = Math.max(least, height - AGREE * sigma);
            most = Math.min(most, height + TOO_HIGH * sigma);
            if (level == 0 || high[level] > front.pyramid.mean(level)) {
                // The highest is behind; where a mean still rises, a shorter one knows the time better.
                atNanos = highNanos[level];
            }
        }
    }

    private boolean isUsed(int level) {
        if (level == 0 || level + 1 == levels) {
            return isAllowed(level);
        }
        double lost = lost(level);
        double white = front.noise.white(level, high[level]);
        return NO_PARABOLA * lost * (lost / Math.abs(high[level])) <= white && isAllowed(level);
    }

    private boolean isAllowed(int level) {
        return level < ALWAYS || front.pace.blockSeconds() * Pyramid.length(level) <= LONGEST_SECONDS;
    }

    /** How much a block would lose by the roundness, as far as the means of a level and longer ones tell. */
    private void measureRoundness() {
        double least = Double.POSITIVE_INFINITY;
        for (int level = levels - 1; level >= 0; level--) {
            if (level + 1 < levels) {
                least = Math.min(least, Math.max(0, high[level] - high[level + 1]) / square(level));
            }
            round[level] = least;
        }
    }

    /** M(L) - M(2 L) at a level. */
    private double lost(int level) {
        return round[level] * square(level);
    }

    private static double square(int level) {
        return 1 << (2 * level);
    }

    private double whiteFactor(int level) {
        return level + 1 < levels ? EXTRAPOLATED : 1;
    }

    /** The height that a level shows, less what it is too high by chance. */
    private double sure(int level) {
        double height = level + 1 < levels ? high[level] + (high[level] - high[level + 1]) / 3 : high[level];
        double white = front.noise.white(level, high[level]);
        double byChance = greatest(competing(level, white)) * whiteFactor(level) * white;
        return height - byChance - GREATEST_SLOW * front.noise.excess(level);
    }

    /** How many means compete for being the highest: all there are where the top is flat. */
    private double competing(int level, double white) {
        double most = Math.min(1L << (GREATEST_OF_POWERS_OF_TWO.length - 1), Math.max(1, age >> level));
        double lost = lost(level);
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
        levels = 0;
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
        return levels == 0 ? Double.NaN : high[0] + (high[0] - high[levels - 1]) / 3;
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
