package org.slugpeak.core.peak;

import java.time.Duration;
import org.slugpeak.core.reading.Condition;

/**
 * Watches a stream of readings for its maximum (or minimum, or zero) while somebody turns an adjuster.
 *
 * <p>One thread at a time. Time comes only with the readings; it may start anywhere. Readings that share a stamp, or come in packets, are laid
 * out over the time they stand for; what is told carries that time.
 */
public final class PeakFinder {

    /** A reading that is larger is taken as this: sums of them stay finite. */
    private static final double LARGEST = 1e290;
    /** The sign is known when the level stands out of the noise by so many sigma. */
    private static final double SIGN_SHOWS = 6;

    private static final int SIGN_BLOCKS = 4;

    private final PeakListener listener;
    private final Orientation orientation;
    private final Front front = new Front();
    private final HuntGoal goal;
    private final Seeker seeker;

    private boolean begun;
    private boolean saidNegative;

    private PeakFinder(PeakSettings settings, PeakListener listener) {
        this.listener = new OnReadAxis(front.time, listener);
        this.orientation = new Orientation(settings.seek());
        Sight sight = new Sight(front);
        this.goal = goal(settings, sight);
        this.seeker = new Hunt(sight, goal);
    }

    private HuntGoal goal(PeakSettings settings, Sight sight) {
        long dwellNanos = nanos(settings.dwell());
        return switch (settings.seek()) {
            case PEAK, DIP -> new ExtremeGoal(sight, orientation, dwellNanos, listener);
            case ZERO -> new ZeroGoal(sight, dwellNanos, listener);
        };
    }

    private static long nanos(Duration dwell) {
        return dwell.compareTo(Duration.ofNanos(Long.MAX_VALUE)) >= 0 ? Long.MAX_VALUE : dwell.toNanos();
    }

    /**
     * A finder that has seen nothing yet.
     *
     * @param settings what to seek and how long to dwell
     * @param listener hears the verdicts
     * @return a new finder
     */
    public static PeakFinder create(PeakSettings settings, PeakListener listener) {
        return new PeakFinder(settings, listener);
    }

    /**
     * Takes one reading.
     *
     * @param tNanos when it was read, nanoseconds on a monotonic axis
     * @param value in one unit throughout, finite; ignored where the condition is not trusted
     * @param condition how far it can be believed
     */
    public void accept(long tNanos, double value, Condition condition) {
        if (!condition.isTrusted() || !Double.isFinite(value)) {
            return;
        }
        double reading = Math.max(-LARGEST, Math.min(value, LARGEST));
        if (orientation.seek().signCounts()) {
            front.accept(tNanos, reading, seeker);
            return;
        }
        if (!begun && reading != 0) {
            begun = true;
            orientation.polarity(Math.signum(reading));
        }
        front.accept(tNanos, orientation.upwards(reading), seeker);
        watchSign(reading);
    }

    private void watchSign(double reading) {
        if (!front.pyramid.has(0, SIGN_BLOCKS)) {
            return;
        }
        double magnitude = orientation.magnitude(front.pyramid.mean(1));
        if (magnitude >= 0 && (saidNegative || !orientation.negative())) {
            return;
        }
        double shows = SIGN_SHOWS * front.noise.sigma(1, magnitude);
        if (magnitude < -shows && -magnitude > Math.abs(goal.best())) {
            orientation.polarity(orientation.negative() ? 1 : -1);
            front.gap(seeker);
            seeker.restart();
        } else if (!saidNegative && orientation.negative() && magnitude > shows) {
            saidNegative = true;
            listener.hint(front.time.nanos(), Hint.NEGATIVE_GOING, reading);
        }
    }

    /**
     * Says that the stream was interrupted: what comes next need not follow on what came before. The best is kept.
     */
    public void gap() {
        front.gap(seeker);
    }

    /**
     * Says that the readings come on another scale from now on, because the generator was turned and they are multiplied to go on where
     * the earlier ones ended: the meter's own noise was multiplied with them. The best is kept; the noise is learnt anew.
     */
    public void scaleChanged() {
        front.noise.unsettle();
        front.gap(seeker);
    }

    /** Forgets the best and everything else about the present adjuster; what is known of the noise is kept. */
    public void restart() {
        front.gap(seeker);
        seeker.restart();
    }

    /**
     * The best so far, with the sign that was read.
     *
     * @return in the unit of the readings; NaN until there is one; 0 for a zero that was crossed
     */
    public double best() {
        return goal.best();
    }

    /**
     * How well the best is known.
     *
     * @return one sigma, in the unit of the readings, not negative; NaN until there is a best
     */
    public double bestSigma() {
        return goal.bestSigma();
    }

    /**
     * When the best was reached.
     *
     * @return nanoseconds on the axis of the readings; meaningless until there is a best
     */
    public long bestAtNanos() {
        return front.time.asRead(goal.bestAtNanos());
    }

    /**
     * The reading, smoothed as far as its white noise asks for, so that it follows a hand within a few readings.
     *
     * @return in the unit of the readings; NaN before the first trusted reading
     */
    public double smoothed() {
        return goal.smoothed();
    }

    /**
     * The smoothed reading as a fraction of the best.
     *
     * @return 1 at the best, less below it (more above it for a dip), and for a moment beyond while the best still has to be made
     *     sure of; NaN while there is no best, and for a zero
     */
    public double ofBest() {
        double ratio = goal.smoothed() / goal.best();
        return Double.isFinite(ratio) ? ratio : Double.NaN;
    }

    /**
     * How far the smoothed reading is on the wrong side of the best.
     *
     * @return dB, not negative; NaN while there is no best, and for a zero
     */
    public double belowBestDb() {
        return goal.belowBestDb();
    }

    /**
     * Which way the magnitude of the reading goes.
     *
     * @return never null; steady until something else is seen
     */
    public Trend trend() {
        int trend = goal.trend();
        return trend > 0 ? Trend.RISING : trend < 0 ? Trend.FALLING : Trend.STEADY;
    }
}
