package org.slugpeak.core.peak;

/** What is seen of the level just now: its smoothed height, its speed, its means. One thread at a time. */
final class Sight {

    final Front front;
    final Smoother level = new Smoother();
    final Slope slope;
    final Sway sway = new Sway();

    Sight(Front front) {
        this.front = front;
        this.slope = new Slope(front);
    }

    /** There is a new block. */
    void look(long tNanos) {
        level.look(front.pyramid, front.noise, front.pace.blockSeconds());
        slope.moved();
        if (isReady()) {
            sway.look(tNanos, front);
        }
    }

    /** Whether anything is known of the noise; before, no level can be judged. */
    boolean isReady() {
        return front.noise.seen() >= 1;
    }

    double blockSeconds() {
        return front.pace.blockSeconds();
    }

    /** The mean over so many seconds, or as many as there are. */
    double meanOver(double seconds) {
        return front.pyramid.mean(front.octave(seconds));
    }

    /** One sigma of such a mean, near a level. */
    double sigmaOver(double seconds, double level) {
        return front.noise.sigma(front.octave(seconds), level);
    }

    void gap() {
        slope.clear();
        sway.gap();
    }

    void restart() {
        level.clear();
        slope.clear();
        sway.restart();
    }
}
