package org.slugpeak.core.peak;

/**
 * Whether a level stands out of the noise about nothing.
 *
 * <p><b>Definition.</b> A magnitude has no other side than one: what goes below nothing and comes back is noise, and as far as noise goes one way it goes the
 * other. So a travel shows something of an adjuster once its level has been {@value #STANDS_OUT} times as large as means of any length have twice gone below
 * nothing, beyond what white noise and the last digit explain, in the last {@value #MEMORY_SECONDS} to twice as many seconds.
 *
 * <p><b>Edges.</b> Where no reading lies below nothing every level stands out. What goes there and stays is a signal of the other sign; what goes there
 * once is a set that was switched off, and with it the voltage that it rests at.
 *
 * <p><b>Algorithm.</b> The two deepest stays below of the present stretch of the memory and of that before. Constant cost a block, next to none where nothing lies below;
 * nothing allocated.
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Underside {

    /**
     * Chosen: the deepest of a minute is 2 to 4 sigma, and as much less as the zero is taken too low; a signal that is smaller than 6 times that
     * could not be placed within a decibel.
     */
    private static final double STANDS_OUT = 6;
    /** Long enough to show how far noise goes; noise that has ended is forgotten as soon. */
    private static final double MEMORY_SECONDS = 60;
    /** A mean is known to half a digit. */
    private static final double DIGITS = 0.5;

    private final Orientation orientation;
    private double reached;
    /** Of the stay below that goes on; it counts when it has ended. */
    private double depth;

    private double deepest;
    private double again;
    private double againBefore;
    private boolean begun;
    private long sinceNanos;
    private boolean negative;
    private boolean turnedOver;

    Underside(Orientation orientation) {
        this.orientation = orientation;
    }

    /** Takes the newest block. */
    void look(long tNanos, Sight sight) {
        reached = Math.max(reached, orientation.magnitude(sight.level.value()));
        remember(tNanos);
        if (orientation.magnitude(sight.front.pyramid.mean(0)) < 0) {
            lookBelow(sight);
        } else {
            count(depth);
            depth = 0;
        }
    }

    private void count(double stay) {
        again = Math.max(again, Math.min(stay, deepest));
        deepest = Math.max(deepest, stay);
    }

    private void lookBelow(Sight sight) {
        Pyramid means = sight.front.pyramid;
        for (int octave = 0; octave < Pyramid.OCTAVES && means.has(octave, 1); octave++) {
            double below = -orientation.magnitude(means.mean(octave));
            if (below > depth) {
                depth = Math.max(depth, below - explained(octave, below, sight));
            }
        }
    }

    private static double explained(int octave, double below, Sight sight) {
        Noise noise = sight.front.noise;
        double sigmas = greatest(MEMORY_SECONDS / (sight.blockSeconds() * Pyramid.length(octave)));
        return sigmas * noise.margin() * noise.white(octave, below) + DIGITS * noise.step();
    }

    /** What the greatest of many normal deviates comes near to from above: sqrt(2 ln n), for twice the memory. */
    private static double greatest(double means) {
        return Math.sqrt(2 * Math.log(Math.max(2, 2 * means)));
    }

    private void remember(long tNanos) {
        if (!begun || Elapsed.seconds(sinceNanos, tNanos) >= MEMORY_SECONDS) {
            begun = true;
            sinceNanos = tNanos;
            againBefore = again;
            again = 0;
            deepest = 0;
        }
    }

    /** Whether the travel has shown more than noise. */
    boolean standsOut() {
        return reached >= STANDS_OUT * Math.max(again, againBefore);
    }

    /** Another adjuster, or the other sign is taken for that of the signal; where it is so twice in a row, neither is: the first one was a stay below. */
    void restart() {
        boolean turnsOver = orientation.negative() != negative;
        if (turnsOver && turnedOver) {
            count(reached);
        } else if (!turnsOver) {
            again = 0;
            againBefore = 0;
            deepest = 0;
        }
        turnedOver = turnsOver;
        negative = orientation.negative();
        reached = 0;
        depth = 0;
    }
}
