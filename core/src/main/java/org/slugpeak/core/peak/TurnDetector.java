package org.slugpeak.core.peak;

import java.util.Arrays;

/**
 * Decides when the level has turned: a sequential test of "it has not fallen" against "it has fallen", at all averaging
 * times at once. For windows of every length it compares the newest mean with the highest one since the last turn; the
 * shortest window whose fall exceeds its noise decides. So the averaging time is chosen by noise, rate and speed of
 * turning by itself: a fast fall shows in a short window first, a slow one only in a long window.
 *
 * <p>The threshold for a window of length T is set so that on steady readings with normal noise a false turn comes less
 * than once in {@value #HOURS_PER_FALSE_TURN} hours of readings: the number of chances grows as 1/T, so the single test gets the
 * tail probability p = T / ({@value #HOURS_PER_FALSE_TURN} h x {@value #TESTS_PER_WINDOW}). The highest of N means is too high by
 * itself, about as sqrt(2 ln N) sigma, which is followed by {@value #PER_DOUBLING} sigma for each doubling of N.
 *
 * <p>A mean is compared with the highest mean twice as long, which shows a fall best (docs/peak-finder.md), and with the highest of
 * its own length, which shows it less well but needs less time; that one has to fall further, so that nearly all false turns are
 * left to the better test.
 *
 * <p>Source: Page, Continuous inspection schemes, Biometrika 41 (1954) 100, for the comparison with the extreme reached so
 * far; Wald, Sequential Analysis, 1947, for fixing the error rate of an open-ended test in advance.
 */
final class TurnDetector {

    /** What the newest block showed. */
    enum Turn {
        /** Nothing new. */
        NONE,
        /** The first movement seen is upwards. */
        BEGAN_UP,
        /** The first movement seen is downwards. */
        BEGAN_DOWN,
        /** A minimum has been passed. */
        UP,
        /** A maximum has been passed. */
        DOWN
    }

    private static final double HOURS_PER_FALSE_TURN = 24;
    private static final double PER_DOUBLING = 0.3;
    /**
     * About as many independent tests are made in the time of one window: windows slide, but all of them look at the same readings.
     */
    private static final double TESTS_PER_WINDOW = 4;
    /** So many sigma of the difference more are asked of means of equal length: leaves a hundredth of the false turns to them. */
    private static final double MORE_OF_EQUAL = 1;
    /** Sigma of the difference of two means of equal length, in sigma of one. */
    private static final double EQUAL = Math.sqrt(2);
    /** The same where the earlier one is twice as long: sqrt(1 + 1/2). */
    private static final double TWICE = Math.sqrt(1.5);
    /**
     * A fall is sought among the last so many windows, or twice as many: it shows best within two and a half (docs/peak-finder.md). What
     * went down before that is drift.
     */
    private static final int MEMORY_WINDOWS = 8;
    /** No threshold is below so many sigma: spares working it out. */
    private static final double NEVER_LESS = 5;
    /** Longest averaging; turning slower than this shows is indistinguishable from drift. */
    private static final double LONGEST_SECONDS = 6;
    /** Blocks that come this quickly must show a fall twice: a small spike looks like a fall in one of them. */
    private static final double CONFIRM_SECONDS = 0.06;
    /** A window of 2^n blocks is looked at after every 2^(n - {@value}) blocks: by then it has changed by a sixteenth. */
    private static final int LOOKS_PER_WINDOW_LOG2 = 4;
    /** These many octaves are used however slow the meter is. */
    private static final int ALWAYS = 3;

    private final Sway sway;
    private final double[] high = new double[Pyramid.OCTAVES];
    private final double[] low = new double[Pyramid.OCTAVES];
    private final double[] highestEver = new double[Pyramid.OCTAVES];
    private final double[] highBefore = new double[Pyramid.OCTAVES];
    private final double[] lowBefore = new double[Pyramid.OCTAVES];
    private final long[] roseAt = new long[Pyramid.OCTAVES];
    private final double[] quantile = new double[Pyramid.OCTAVES];
    private boolean confirms;
    private boolean fellBefore;
    private int octaves = 1;
    private long age;
    private int direction;
    private double least;
    private double blockSeconds;

    TurnDetector(Sway sway) {
        this.sway = sway;
    }

    /**
     * Begins a new stretch: what came before is neither high nor low.
     *
     * @param newBlockSeconds time from block to block
     */
    void restart(double newBlockSeconds) {
        blockSeconds = newBlockSeconds;
        age = 0;
        octaves = 0;
        fellBefore = false;
        confirms = blockSeconds <= CONFIRM_SECONDS;
        Arrays.fill(roseAt, 0);
        for (int octave = 0; octave < Pyramid.OCTAVES; octave++) {
            double seconds = blockSeconds * Pyramid.length(octave);
            if (octave < ALWAYS || seconds <= LONGEST_SECONDS) {
                octaves = octave + 1;
            }
            quantile[octave] = quantile(Math.max(seconds, 1e-3));
        }
    }

    /** Forgets the direction too. */
    void forget(double newBlockSeconds) {
        direction = 0;
        restart(newBlockSeconds);
    }

    /** Takes it for known that the level goes up from here. */
    void assumeUp(double newBlockSeconds) {
        direction = 1;
        restart(newBlockSeconds);
    }

    /** Nobody knows which way the level has gone: a fall is none before a rise has been seen. */
    void assumeDown(double newBlockSeconds) {
        direction = -1;
        restart(newBlockSeconds);
    }

    /** Falls and rises smaller than this part of the level are none. */
    void least(double part) {
        least = part;
    }

    /** Looks at the newest block. */
    Turn look(Pyramid pyramid, Noise noise) {
        age++;
        for (int octave = 0; octave < octaves && age >= Pyramid.length(octave); octave++) {
            if (octave > LOOKS_PER_WINDOW_LOG2 && (age & (Pyramid.length(octave - LOOKS_PER_WINDOW_LOG2) - 1)) != 0) {
                break;
            }
            double mean = pyramid.mean(octave);
            remember(octave, mean);
            Turn turn = look(octave, mean, noise);
            if (turn != Turn.NONE) {
                return turn;
            }
        }
        return Turn.NONE;
    }

    /** The highest and the lowest are those of the last {@value #MEMORY_WINDOWS} to twice as many windows. */
    private void remember(int octave, double mean) {
        if (age == Pyramid.length(octave)) {
            highBefore[octave] = mean;
            lowBefore[octave] = mean;
            high[octave] = mean;
            low[octave] = mean;
            highestEver[octave] = mean;
        } else if ((age & ((long) MEMORY_WINDOWS * Pyramid.length(octave) - 1)) == 0) {
            highBefore[octave] = high[octave];
            lowBefore[octave] = low[octave];
            high[octave] = mean;
            low[octave] = mean;
        }
    }

    private double highest(int octave) {
        return highBefore[octave] > high[octave] ? highBefore[octave] : high[octave];
    }

    private double lowest(int octave) {
        return lowBefore[octave] < low[octave] ? lowBefore[octave] : low[octave];
    }

    private Turn look(int octave, double mean, Noise noise) {
        double small = Math.max(least * Math.abs(mean), NEVER_LESS * noise.white(octave, mean));
        if (direction >= 0 && isConfirmed(octave, hasFallen(octave, mean, small, noise))) {
            Turn turn = direction == 0 ? Turn.BEGAN_DOWN : Turn.DOWN;
            direction = -1;
            return turn;
        }
        if (direction <= 0 && hasRisen(octave, mean, small, noise)) {
            Turn turn = direction == 0 ? Turn.BEGAN_UP : Turn.UP;
            direction = 1;
            return turn;
        }
        return Turn.NONE;
    }

    private boolean isConfirmed(int octave, boolean fallen) {
        if (octave > 0 || !confirms) {
            return fallen;
        }
        boolean twice = fallen && fellBefore;
        fellBefore = fallen;
        return twice;
    }

    private boolean hasRisen(int octave, double mean, double small, Noise noise) {
        if (mean < low[octave]) {
            low[octave] = mean;
        }
        double change = mean - lowest(octave);
        return change > small && beyondEqual(octave, change, mean, noise);
    }

    private boolean hasFallen(int octave, double mean, double small, Noise noise) {
        double before = highest(octave);
        if (mean > highestEver[octave]) {
            roseAt[octave] = mean > highestEver[octave] + noise.white(octave, mean) ? age : roseAt[octave];
            highestEver[octave] = mean;
        }
        if (mean > high[octave]) {
            high[octave] = mean;
        }
        double change = before - mean;
        if (change > small && beyondEqual(octave, change, mean, noise)) {
            return true;
        }
        if (octave + 1 >= octaves || age <= Pyramid.length(octave + 1)) {
            return false;
        }
        double fromLonger = highest(octave + 1) - mean;
        return fromLonger > small && beyond(octave, fromLonger, TWICE * quantile[octave], mean, noise);
    }

    private boolean beyondEqual(int octave, double change, double mean, Noise noise) {
        return beyond(octave, change, EQUAL * (quantile[octave] + MORE_OF_EQUAL), mean, noise);
    }

    private boolean beyond(int octave, double change, double sigmas, double mean, Noise noise) {
        return noise.seen() > ALWAYS && change > threshold(octave, sigmas, mean, noise);
    }

    private double threshold(int octave, double sigmas, double mean, Noise noise) {
        long windows = Math.max(1, Math.min(2 * MEMORY_WINDOWS, (age - roseAt[octave]) >> octave));
        int doublings = Long.SIZE - 1 - Long.numberOfLeadingZeros(windows);
        double factor = sigmas + PER_DOUBLING * doublings;
        return factor * noise.margin() * noise.white(octave, mean)
                + noise.step()
                + noise.slowest(octave, mean)
                + sway.within(blockSeconds * Pyramid.length(octave));
    }

    /** 1 upwards, -1 downwards, 0 not known. */
    int direction() {
        return direction;
    }

    /** Blocks since the level last rose beyond what it was. */
    long blocksSinceRise() {
        long latest = 0;
        for (int octave = 0; octave < octaves; octave++) {
            latest = Math.max(latest, roseAt[octave]);
        }
        return age - latest;
    }

    private static double quantile(double windowSeconds) {
        double tests = TESTS_PER_WINDOW * HOURS_PER_FALSE_TURN * 3600 / windowSeconds;
        return Tail.normal(Math.min(1e-3, 1 / tests));
    }
}
