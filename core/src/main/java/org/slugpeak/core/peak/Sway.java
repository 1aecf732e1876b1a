package org.slugpeak.core.peak;

/**
 * A level that goes up and down by itself and does so again: the beat of hum with the readings, a pulsing supply.
 *
 * <p><b>Definition.</b> The mean over about {@value #WINDOW_SECONDS} s is followed from turning point to turning point. Three swings in a row that are alike in
 * size (within {@value #ALIKE_SIZE}) and in time (within {@value #ALIKE_TIME}) are a sway; so are two, a dip, where size and time are alike
 * within {@value #TWIN_SIZE} and {@value #TWIN_TIME}: a hand comes back more slowly than it went. The sway is as large as their mean and lasts
 * {@value #LASTS} of its periods, and {@value #LASTS_SECONDS} s where {@value #CONFIRMED} turning points in a row were alike.
 *
 * <p><b>Edges.</b> Before that its size is 0. A window of length L shows of a swing of period P the part min(1, P / (pi L)).
 *
 * <p><b>Algorithm.</b> Turning points with a dead zone of {@value #DEAD_SIGMAS} sigma. Constant cost a block, nothing allocated. The part is the envelope of
 * sin(x) / x, by which a mean weakens a sine.
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Sway {

    private static final double WINDOW_SECONDS = 0.05;
    /** Chosen: a beat with noise on it is as even as this; a hand that hunts to and fro seldom is. */
    private static final double ALIKE_SIZE = 1.35;

    private static final double ALIKE_TIME = 1.6;
    private static final double TWIN_SIZE = 1.15;
    private static final double TWIN_TIME = 1.25;
    private static final double LASTS = 3;
    /** While the next adjuster is turned up its slope hides the sway; it is still there at the top. */
    private static final double LASTS_SECONDS = 20;
    /** Turning points in a row that are alike: no hand that obeys goes to and fro so often. */
    private static final int CONFIRMED = 4;
    /** White noise itself wanders over nearly nine sigma in an hour. */
    private static final double DEAD_SIGMAS = 10;
    /** No hum moves a reading by more than this part of itself, peak to peak: more is a hand that sweeps to and fro. */
    private static final double MOST = 0.08;
    /** A fall is none of the sway's where it is larger than the sway by this factor. */
    private static final double BEYOND = 1.2;

    private static final int POINTS = 4;

    private final double[] points = new double[POINTS];
    private final long[] times = new long[POINTS];
    private int known;
    private int direction;
    private double size;
    private double periodSeconds;
    private long untilNanos;
    private int inARow;

    /** Takes the newest block. */
    void look(long tNanos, Front front) {
        int span = front.octave(WINDOW_SECONDS);
        double mean = front.pyramid.mean(span);
        if (known == 0) {
            put(mean, tNanos);
            known = 1;
            return;
        }
        double dead = DEAD_SIGMAS * front.noise.white(span, mean) + front.noise.step();
        double moved = mean - points[0];
        if (moved * direction > 0) {
            replace(mean, tNanos);
        } else if (Math.abs(moved) > dead) {
            direction = moved > 0 ? 1 : -1;
            turned(tNanos, MOST * Math.abs(mean));
            put(mean, tNanos);
            known = Math.min(known + 1, POINTS);
        }
        if (size > 0 && Elapsed.nanos(untilNanos, tNanos) > 0) {
            size = 0;
        }
    }

    private void put(double mean, long tNanos) {
        for (int i = POINTS - 1; i > 0; i--) {
            points[i] = points[i - 1];
            times[i] = times[i - 1];
        }
        replace(mean, tNanos);
    }

    private void replace(double mean, long tNanos) {
        points[0] = mean;
        times[0] = tNanos;
    }

    /** The newest point has become a turning point: what were the swings before it? */
    private void turned(long tNanos, double most) {
        boolean alike = known >= POINTS && areAlike(3, ALIKE_SIZE, ALIKE_TIME);
        boolean twins = known >= POINTS - 1 && areAlike(2, TWIN_SIZE, TWIN_TIME);
        if (!alike && !twins) {
            inARow = 0;
            return;
        }
        int swings = alike ? 3 : 2;
        double sum = 0;
        for (int i = 0; i < swings; i++) {
            sum += swing(i);
        }
        if (sum > swings * most) {
            inARow = 0;
            return;
        }
        inARow++;
        size = sum / swings;
        periodSeconds = 2 * Elapsed.seconds(times[swings], times[0]) / swings;
        double lastsSeconds = isConfirmed() ? Math.max(LASTS_SECONDS, LASTS * periodSeconds) : LASTS * periodSeconds;
        untilNanos = tNanos + Math.round(1e9 * lastsSeconds);
    }

    private boolean isConfirmed() {
        return inARow >= CONFIRMED;
    }

    private double swing(int index) {
        return Math.abs(points[index] - points[index + 1]);
    }

    private boolean areAlike(int swings, double sizeFactor, double timeFactor) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        for (int i = 0; i < swings; i++) {
            double seconds = Elapsed.seconds(times[i + 1], times[i]);
            least = Math.min(least, swing(i));
            most = Math.max(most, swing(i));
            shortest = Math.min(shortest, seconds);
            longest = Math.max(longest, seconds);
        }
        return most <= sizeFactor * least && longest <= timeFactor * shortest;
    }

    /** How far a mean over so many seconds may fall or rise by the sway alone. */
    double within(double seconds) {
        if (!(size > 0)) {
            return 0;
        }
        double part = periodSeconds / (Math.PI * seconds);
        return BEYOND * size * (part < 1 ? part : 1);
    }

    /** Another adjuster: only what is surely no hand's doing goes on. */
    void restart() {
        size = isConfirmed() ? size : 0;
    }

    /** What comes next need not follow on what came before. */
    void gap() {
        known = 0;
        direction = 0;
    }
}
