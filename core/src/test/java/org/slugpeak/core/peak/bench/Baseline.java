package org.slugpeak.core.peak.bench;

import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.PeakListener;

/** What one would do without a finder: a mean of fixed kind, its highest value, and a fixed drop from it. */
final class Baseline implements Watcher {

    private static final double DWELL_SECONDS = 2;
    /** Part of the drop at which the reading counts as back. */
    private static final double BACK = 0.25;

    private final PeakListener listener;
    private final double meanSeconds;
    private final double fixedDrop;
    private final double dropSigmas;

    private long lastNanos;
    private boolean begun;
    private double mean;
    private double variance;
    private double sigma;
    private double best = Double.NEGATIVE_INFINITY;
    private double lowest = Double.POSITIVE_INFINITY;
    private long bestAtNanos;
    private boolean rose;
    private boolean past;
    private boolean back;
    private boolean saidWrong;
    private long backSinceNanos;

    private Baseline(PeakListener listener, double meanSeconds, double fixedDrop, double dropSigmas) {
        this.listener = listener;
        this.meanSeconds = meanSeconds;
        this.fixedDrop = fixedDrop;
        this.dropSigmas = dropSigmas;
    }

    /** A meter's max hold and a fall of five percent below it. */
    static Watcher maxHold(PeakListener listener) {
        return new Baseline(listener, 0, 0.05, 0);
    }

    /** A mean over about a second, and two percent. */
    static Watcher slowMean(PeakListener listener) {
        return new Baseline(listener, 1, 0.02, 0);
    }

    /** A mean over 0.2 s and five sigma of what remains of the noise in it. */
    static Watcher adaptive(PeakListener listener) {
        return new Baseline(listener, 0.2, 0.005, 5);
    }

    @Override
    public void accept(long tNanos, double value) {
        smooth(tNanos, value);
        lowest = Math.min(lowest, mean);
        if (mean > best) {
            best = mean;
            bestAtNanos = tNanos;
        }
        double drop = drop();
        rose |= mean > lowest * (1 + drop);
        judge(tNanos, drop);
    }

    private void smooth(long tNanos, double value) {
        double seconds = begun ? (tNanos - lastNanos) / 1e9 : 0;
        double gain = begun && meanSeconds > 0 ? 1 - Math.exp(-seconds / meanSeconds) : 1;
        double error = begun ? value - mean : 0;
        variance += 0.02 * (error * error - variance);
        mean = begun ? mean + gain * error : value;
        lastNanos = tNanos;
        begun = true;
        sigma = Math.sqrt(variance * gain / (2 - gain));
    }

    private double drop() {
        return Math.max(fixedDrop, dropSigmas * sigma / Math.abs(mean));
    }

    private void judge(long tNanos, double drop) {
        boolean below = mean < best * (1 - drop);
        if (below && !rose && !saidWrong) {
            saidWrong = true;
            listener.hint(tNanos, Hint.WRONG_WAY, 0);
        } else if (below && rose && (!past || back)) {
            past = true;
            back = false;
            listener.passed(tNanos, best, bestAtNanos, 0);
        } else if (past && !back && mean >= best * (1 - BACK * drop)) {
            back = true;
            backSinceNanos = tNanos;
            listener.returned(tNanos, mean, 0);
        } else if (back && (tNanos - backSinceNanos) / 1e9 >= DWELL_SECONDS) {
            listener.held(tNanos, mean, 0);
        }
    }

    @Override
    public double best() {
        return best;
    }
}
