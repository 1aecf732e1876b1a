package org.slugpeak.core.peak;

/**
 * What the readings themselves tell about their noise, for windows of every length.
 *
 * <p>Third differences of neighbouring means remove level, slope and curvature, so that turning the adjuster hardly counts
 * as noise (von Neumann et al., The mean square successive difference, Ann. Math. Statist. 12 (1941) 153, taken two orders
 * further; their sum of squared weights is 1 + 9 + 9 + 1 = 20). White noise is measured at single blocks and divided by
 * the root of the window's length. What longer windows show beyond that (hum beats, 1/f) is kept apart as {@link #excess}:
 * it does not average away. The last digit of the meter never averages away either.
 */
final class Noise {

    private static final double WEIGHTS = Math.sqrt(20);
    /** Blocks: quick to follow a noise that grows with the signal. */
    private static final double SHORT_MEMORY = 128;
    /** Blocks: steady enough that a threshold at five sigma means something. */
    private static final double LONG_MEMORY = 512;
    /**
     * The quick scale spreads by about 6 percent. It counts where it shows more than that beyond the steady one: taking always the
     * larger would make every threshold too high.
     */
    private static final double QUICK_SPREAD = 1.1;
    /** Windows: a few periods of a beat. */
    private static final double SLOW_MEMORY = 12;
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
    /** Hum beats and flicker of a sound set stay below this part of the reading; more is the hand. */
    private static final double MOST_SLOW = 0.01;
    /** So long a record shows whether there is slow noise. */
    private static final double SLOW_KNOWN_SECONDS = 3;
    /**
     * A scale that rests on n correlated deviations has about n/2 degrees of freedom. Student's quantile over the normal one, at
     * tail probabilities near 1e-7, is close to exp(9 / degrees of freedom) from 5 degrees upwards.
     */
    private static final double UNSURE = 16;
    /** No meter is steadier than a part in this, whatever a run of equal readings says. */
    private static final double STEADIEST = 1e-5;
    /** Standard deviation of a rounding error, in steps: 1/sqrt(12). */
    private static final double ROUNDING = Math.sqrt(1.0 / 12);

    private final StepSize step = new StepSize();
    private final Scale quick = new Scale(SHORT_MEMORY);
    private final Scale calm = new Scale(LONG_MEMORY);
    private final Scale[] slow = new Scale[Pyramid.LEVELS];
    private final double[] excess = new double[Pyramid.LEVELS];
    private final double[] averaging = new double[Pyramid.LEVELS];
    private double white;
    private double margin;
    private boolean slowKnown;
    private int longestSlow;

    Noise() {
        for (int level = 0; level < Pyramid.LEVELS; level++) {
            slow[level] = new Scale(SLOW_MEMORY);
            averaging[level] = Math.sqrt(1.0 / Pyramid.length(level));
        }
    }

    /** Takes the newest block of the pyramid. */
    void add(Pyramid pyramid, double blockSeconds) {
        if (pyramid.has(0, 2)) {
            step.add(pyramid.mean(0) - pyramid.mean(0, 1), pyramid.mean(0));
        }
        if (pyramid.has(0, 4)) {
            double deviation = thirdDifference(pyramid, 0);
            double floor = Math.max(step.step(), STEADIEST * Math.abs(pyramid.mean(0)));
            quick.add(deviation, floor);
            calm.add(deviation, floor);
            white = quick.sigma() > QUICK_SPREAD * calm.sigma() ? quick.sigma() : calm.sigma();
            slowKnown |= calm.seen() * blockSeconds >= SLOW_KNOWN_SECONDS;
            if (calm.seen() < LONG_MEMORY || margin == 0) {
                margin = Math.exp(UNSURE / calm.seen());
            }
        }
        if ((pyramid.blocks() & 1) == 0) {
            addSlow(pyramid, blockSeconds);
        }
    }

    private void addSlow(Pyramid pyramid, double blockSeconds) {
        boolean changed = false;
        for (int level = 1; level < Pyramid.LEVELS && pyramid.has(level, 4); level++) {
            int half = Pyramid.length(level - 1);
            if ((pyramid.blocks() & (half - 1)) != 0 || blockSeconds * 2 * half > SLOWEST_SECONDS) {
                break;
            }
            double deviation = slowDeviation(pyramid, level, 2 * half * blockSeconds);
            if (Double.isNaN(deviation)) {
                continue;
            }
            slow[level].add(deviation, 0);
            longestSlow = Math.max(longestSlow, level);
            changed = true;
        }
        if (changed) {
            findExcess(MOST_SLOW * Math.abs(pyramid.mean(0)));
        }
    }

    /** What may be slow noise in four means; NaN where they move too far, or where the hand starts or stops. */
    private static double slowDeviation(Pyramid pyramid, int level, double seconds) {
        int n = Pyramid.length(level);
        double newest = pyramid.mean(level) - pyramid.mean(level, n);
        double middle = pyramid.mean(level, n) - pyramid.mean(level, 2 * n);
        double oldest = pyramid.mean(level, 2 * n) - pyramid.mean(level, 3 * n);
        double path = Math.abs(newest) + Math.abs(middle) + Math.abs(oldest);
        double least = Math.min(newest, Math.min(middle, oldest));
        double most = Math.max(newest, Math.max(middle, oldest));
        double none = STEADIEST * Math.abs(pyramid.mean(0));
        boolean oneWay = least >= -none || most <= none;
        boolean stops = oneWay && Math.min(Math.abs(least), Math.abs(most)) < STOPPED * path - none;
        if (stops || path * seconds > FARTHEST * Math.abs(pyramid.mean(0))) {
            return Double.NaN;
        }
        return Math.max(0, Math.abs(newest - 2 * middle + oldest) / WEIGHTS - UNEVEN_TURNING * path);
    }

    private void findExcess(double limit) {
        double most = 0;
        for (int level = longestSlow; level >= 0; level--) {
            if (slow[level].seen() >= 4) {
                most = Math.max(most, slow[level].sigma() - SPREAD * white * averaging[level]);
            }
            excess[level] = Math.min(most, limit);
        }
    }

    private static double thirdDifference(Pyramid pyramid, int level) {
        int n = Pyramid.length(level);
        double outer = pyramid.mean(level) - pyramid.mean(level, 3 * n);
        double inner = pyramid.mean(level, n) - pyramid.mean(level, 2 * n);
        return (outer - 3 * inner) / WEIGHTS;
    }

    /** One sigma of a mean over the window of a level, as far as it averages away. */
    double white(int level, double reading) {
        double averaged = white * averaging[level];
        double least = STEADIEST * Math.abs(reading);
        return averaged > least ? averaged : least;
    }

    /** One sigma of a mean over the window of a level, everything included. */
    double sigma(int level, double reading) {
        return white(level, reading) + ROUNDING * step.step() + 0.5 * excess[level];
    }

    /** The same as far as it is known; before that, as much as there may be. */
    double slowest(int level, double reading) {
        return slowKnown ? excess[level] : MOST_SLOW * Math.abs(reading);
    }

    /** Slow noise beyond white in windows of this level and longer. */
    double excess(int level) {
        return excess[level];
    }

    /** The last digit of the meter; 0 where the readings are continuous. */
    double step() {
        return step.step();
    }

    /** By how much a threshold has to be raised because the noise itself is not well known yet. */
    double margin() {
        return margin;
    }

    /** How many deviations the estimate rests on. */
    double seen() {
        return calm.seen();
    }

    /** The signal jumped: its noise may be another. */
    void unsettle() {
        quick.unsettle();
        calm.unsettle();
    }

    /** Blocks are made of another number of readings from now on. */
    void rescale(double factor) {
        quick.rescale(factor);
        calm.rescale(factor);
        white *= factor;
    }
}
