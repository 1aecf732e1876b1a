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

    static final double WEIGHTS = Math.sqrt(20);
    /** Blocks: quick to follow a noise that grows with the signal. */
    private static final double SHORT_MEMORY = 128;
    /** Blocks: steady enough that a threshold at five sigma means something. */
    private static final double LONG_MEMORY = 512;
    /**
     * The quick scale spreads by about 6 percent. It counts where it shows more than that beyond the steady one: taking always the
     * larger would make every threshold too high.
     */
    private static final double QUICK_SPREAD = 1.1;
    /** A scale that rests on n third differences, each correlated with its neighbours, has about n/2 degrees of freedom. */
    private static final double DEGREES = 0.5;
    /**
     * The tail probability of a test as soon as {@value #FIRST_TESTED} deviations are known; it goes down as the square of their number, so that their sum
     * over a beginning stays finite. A finder begins once for a set: of 1500 such beginnings (a rise, then the rest of a minute) at most 10 had a false
     * pass, with 2e-3 at most 30. Less makes slow meters slower: as if it were 1e-7 they are half a reading later.
     */
    private static final double TAIL_AT_FIRST = 3e-4;

    private static final double FIRST_TESTED = 4;
    /** The tail probability of a test once the noise is well known: that of a window of 0.04 s in the turn detector. */
    private static final double LATER = 1e-7;

    /** No meter is steadier than a part in this, whatever a run of equal readings says. */
    static final double STEADIEST = 1e-5;
    /** Standard deviation of a rounding error, in steps: 1/sqrt(12). */
    private static final double ROUNDING = Math.sqrt(1.0 / 12);

    private final StepSize step = new StepSize();
    private final Spread quick = new Spread(SHORT_MEMORY);
    private final Spread calm = new Spread(LONG_MEMORY);
    private final SlowNoise slow = new SlowNoise();
    private final double[] averaging = new double[Pyramid.OCTAVES];
    private double digit;
    private double white;
    private double margin;

    Noise() {
        for (int octave = 0; octave < Pyramid.OCTAVES; octave++) {
            averaging[octave] = Math.sqrt(1.0 / Pyramid.length(octave));
        }
    }

    /** Takes the newest block of the pyramid. */
    void add(Pyramid pyramid, double blockSeconds) {
        if (pyramid.has(0, 2)) {
            step.add(pyramid.mean(0) - pyramid.mean(0, 1), pyramid.mean(0));
            digit = step.step();
        }
        if (pyramid.has(0, 4)) {
            double deviation = thirdDifference(pyramid, 0);
            double floor = Math.max(digit, STEADIEST * Math.abs(pyramid.mean(0)));
            quick.add(deviation, floor);
            calm.add(deviation, floor);
            white = quick.sigma() > QUICK_SPREAD * calm.sigma() ? quick.sigma() : calm.sigma();
            slow.lasted(calm.seen() * blockSeconds);
            if (calm.seen() < LONG_MEMORY || margin == 0) {
                margin = margin(calm.seen());
            }
        }
        slow.add(pyramid, blockSeconds, white);
    }

    private static double margin(double seen) {
        double tail = Math.min(1e-3, LATER + TAIL_AT_FIRST * FIRST_TESTED / (seen * seen));
        return Tail.student(Tail.normal(tail), DEGREES * seen) / Tail.normal(LATER);
    }

    private static double thirdDifference(Pyramid pyramid, int octave) {
        int n = Pyramid.length(octave);
        double outer = pyramid.mean(octave) - pyramid.mean(octave, 3 * n);
        double inner = pyramid.mean(octave, n) - pyramid.mean(octave, 2 * n);
        return (outer - 3 * inner) / WEIGHTS;
    }

    /** One sigma of a mean over the window of an octave, as far as it averages away. */
    double white(int octave, double reading) {
        double averaged = white * averaging[octave];
        double least = STEADIEST * Math.abs(reading);
        return averaged > least ? averaged : least;
    }

    /** One sigma of a mean over the window of an octave, everything included. */
    double sigma(int octave, double reading) {
        return white(octave, reading) + ROUNDING * digit + 0.5 * slow.excess(octave);
    }

    /** How far slow noise alone may take a mean, as far as it is known; before that, as far as it ever may. */
    double slowest(int octave, double reading) {
        return slow.reach(octave, reading);
    }

    /** Slow noise beyond white in windows of this octave and longer. */
    double excess(int octave) {
        return slow.excess(octave);
    }

    /** The last digit of the meter; 0 where the readings are continuous. */
    double step() {
        return digit;
    }

    /** By how much a threshold has to be raised because the noise itself is not well known yet. */
    double margin() {
        return margin;
    }

    /** How many deviations the estimate rests on. */
    double seen() {
        return calm.seen();
    }

    /** Whether nothing but noise is read. */
    void alone(boolean isAlone) {
        slow.alone(isAlone);
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
