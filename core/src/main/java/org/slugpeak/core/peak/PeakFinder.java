package org.slugpeak.core.peak;

import org.slugpeak.core.reading.Condition;

/**
 * Watches a stream of readings for its maximum (or minimum, or zero) while somebody turns an adjuster.
 *
 * <p>One thread at a time. Time comes only with the readings; it may start anywhere, and a reading that is not later than
 * the one before is taken as simultaneous with it.
 */
public final class PeakFinder {

    private static final double PASS_DROP = Math.pow(10, -0.2 / 20);
    private static final double BACK_WITHIN = Math.pow(10, -0.05 / 20);
    private static final double SMOOTHING_NANOS = 1e8;

    private final long dwellNanos;
    private final PeakListener listener;

    private boolean started;
    private long lastNanos;
    private double smoothed = Double.NaN;
    private double best = Double.NaN;
    private long bestAtNanos;
    private double lowest = Double.NaN;
    private boolean past;
    private boolean back;
    private long backSinceNanos;
    private boolean done;

    private PeakFinder(PeakSettings settings, PeakListener listener) {
        this.dwellNanos = settings.dwell().toNanos();
        this.listener = listener;
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
     * @param value finite; ignored where the condition is not trusted
     * @param condition how far it can be believed
     */
    public void accept(long tNanos, double value, Condition condition) {
        if (!condition.isTrusted()) {
            return;
        }
        if (!started) {
            started = true;
            smoothed = value;
        } else {
            double gain = 1 - Math.exp(-Math.max(0, tNanos - lastNanos) / SMOOTHING_NANOS);
            smoothed += gain * (value - smoothed);
        }
        lastNanos = tNanos;
        double level = Math.abs(smoothed);
        lowest = Double.isNaN(lowest) ? level : Math.min(lowest, level);
        if (Double.isNaN(best) || level > Math.abs(best)) {
            best = smoothed;
            bestAtNanos = tNanos;
        }
        judge(tNanos, level, Math.abs(best));
    }

    private void judge(long tNanos, double level, double top) {
        if (!past && lowest < PASS_DROP * top && level < PASS_DROP * top && bestAtNanos > 0) {
            past = true;
            back = false;
            done = false;
            listener.passed(tNanos, best, bestAtNanos, belowBestDb());
        } else if (past && !back && level >= BACK_WITHIN * top) {
            back = true;
            past = false;
            backSinceNanos = tNanos;
            listener.returned(tNanos, smoothed, belowBestDb());
        } else if (back && !done && tNanos - backSinceNanos >= dwellNanos) {
            done = true;
            listener.held(tNanos, smoothed, belowBestDb());
        }
    }

    /**
     * Says that the stream was interrupted: what comes next need not follow on what came before. The best is kept.
     */
    public void gap() {
        started = false;
    }

    /** Forgets the best and everything else about the present adjuster; what is known of the noise is kept. */
    public void restart() {
        started = false;
        best = Double.NaN;
        lowest = Double.NaN;
        past = false;
        back = false;
        done = false;
    }

    /**
     * The best so far, with the sign that was read.
     *
     * @return in the unit of the readings; NaN until there is one
     */
    public double best() {
        return best;
    }

    /**
     * How well the best is known.
     *
     * @return one sigma, in the unit of the readings; NaN until there is a best
     */
    public double bestSigma() {
        return Double.NaN;
    }

    /**
     * When the best was reached.
     *
     * @return nanoseconds on the axis of the readings; meaningless until there is a best
     */
    public long bestAtNanos() {
        return bestAtNanos;
    }

    /**
     * The reading, smoothed as far as its noise asks for.
     *
     * @return in the unit of the readings; NaN before the first trusted reading
     */
    public double smoothed() {
        return smoothed;
    }

    /**
     * The smoothed reading as a fraction of the best.
     *
     * @return 1 at the best, less below it (more above it for a dip); NaN while there is no best, and for a zero
     */
    public double ofBest() {
        return smoothed / best;
    }

    /**
     * How far the smoothed reading is on the wrong side of the best.
     *
     * @return dB, not negative; NaN while there is no best, and for a zero
     */
    public double belowBestDb() {
        return Math.max(0, -20 * Math.log10(Math.abs(smoothed / best)));
    }

    /**
     * Which way the magnitude of the reading goes.
     *
     * @return never null; steady until something else is seen
     */
    public Trend trend() {
        return Trend.STEADY;
    }
}
