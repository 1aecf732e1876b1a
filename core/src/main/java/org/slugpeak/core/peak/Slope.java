package org.slugpeak.core.peak;

/**
 * How fast the level moves: the difference of the two newest adjacent means, over the shortest window that shows it. It is
 * worked out when somebody asks.
 */
final class Slope {

    /** A movement shows when it exceeds this many sigma of the difference. */
    private static final double SHOWS = 4.2;

    private static final double SLOW_NOISE = 2;
    private static final double LONGEST_SECONDS = 1.5;
    private static final int ALWAYS = 2;
    /** A movement that only longer means show may have ended meanwhile. */
    private static final double RECENT_SECONDS = 0.7;

    private final Front front;
    private boolean known;
    private double perSecond;
    private double middle;
    private double agoSeconds;

    Slope(Front front) {
        this.front = front;
    }

    /** There is a new block. */
    void moved() {
        known = false;
    }

    private void measure() {
        Pyramid pyramid = front.pyramid;
        Noise noise = front.noise;
        double blockSeconds = front.pace.blockSeconds();
        known = true;
        perSecond = 0;
        for (int octave = 0; octave < Pyramid.OCTAVES && pyramid.has(octave, 2); octave++) {
            double seconds = blockSeconds * Pyramid.length(octave);
            if (octave >= ALWAYS && seconds > LONGEST_SECONDS) {
                return;
            }
            double newer = pyramid.mean(octave);
            double older = pyramid.mean(octave, Pyramid.length(octave));
            double noiseOfBoth = SHOWS * Math.sqrt(2) * noise.white(octave, newer);
            if (Math.abs(newer - older) > noiseOfBoth + noise.step() + SLOW_NOISE * noise.excess(octave)) {
                perSecond = seconds > 0 ? (newer - older) / seconds : 0;
                middle = 0.5 * newer + 0.5 * older;
                agoSeconds = seconds;
                return;
            }
        }
    }

    /** Signed speed at the time {@link #agoSeconds}; 0 where nothing shows. */
    double perSecond() {
        if (!known) {
            measure();
        }
        return perSecond;
    }

    /** Whether the readings of so many seconds show a movement. */
    boolean movesWithin(double seconds) {
        return perSecond() != 0 && 2 * agoSeconds <= seconds;
    }

    /** Whether the level falls, as far as the newest readings tell. */
    boolean fallsNow() {
        return perSecond() < 0 && agoSeconds <= RECENT_SECONDS;
    }

    /**
     * When a top of known height will be reached if the hand goes on at its speed. Near its top every resonance is a
     * parabola of the angle: what is missing goes as the square of the time left, so the time left is twice what is missing
     * over the speed at which it shrinks.
     */
    double secondsToTop(double top) {
        if (perSecond() <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return 2 * (top - middle) / perSecond - agoSeconds;
    }

    void clear() {
        known = true;
        perSecond = 0;
    }
}
