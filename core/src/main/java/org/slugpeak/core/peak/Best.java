package org.slugpeak.core.peak;

/**
 * The best so far: what the tops of earlier passes say together, and the top of the present stretch. Two looks at the same top
 * are joined, each weighted by the inverse of its variance; so every pass makes the best surer.
 */
final class Best {

    /** A top is surely higher than the best beyond so many sigma of the difference: then it stands alone. */
    private static final double SURELY = 2;

    /** A best and how well it is known; NaN where there is none. */
    record Mark(double value, double sigma, long atNanos) {
        static final Mark NONE = new Mark(Double.NaN, Double.NaN, 0);
    }

    /** How the present top is joined with those before. */
    private enum How {
        /** It counts only where it is higher. */
        RAISES,
        /** It is the same top seen again. */
        SAME,
        /** Nothing before counts. */
        ALONE
    }

    private final Top top;
    private How how = How.ALONE;
    private double before;
    private double sigmaBefore;
    private long atBefore;
    private boolean stale = true;
    private long changes;
    private double value;
    private double sigma;
    private long atNanos;

    Best(Front front) {
        top = new Top(front);
    }

    /** The top of the present stretch. */
    Top top() {
        return top;
    }

    /** The present top is the same as that of the passes before. */
    void same() {
        if (how == How.RAISES) {
            how = How.SAME;
            stale = true;
        }
    }

    /** Whether a level is lower than the best and the present top, by more than rounding. */
    boolean isMissedBy(double level) {
        double lower = Math.min(value(), top.value());
        return lower - level > Top.ROUNDING * Math.abs(lower);
    }

    /** By how much the present top is lower than those before. */
    double missing() {
        return how == How.ALONE ? 0 : before - top.value();
    }

    double sigmaOfMissing() {
        return how == How.ALONE ? top.sigma() : Sigma.ofDifference(sigmaBefore, top.sigma());
    }

    /** A new stretch begins. */
    void settle() {
        join();
        begin(value, sigma, atNanos);
    }

    void forget() {
        top.forget();
        how = How.ALONE;
        stale = true;
    }

    /** What the best is now. */
    Mark mark() {
        return new Mark(value(), sigma(), atNanos());
    }

    /** The best is what it once was. */
    void recall(Mark mark) {
        begin(mark.value(), mark.sigma(), mark.atNanos());
    }

    /** What the passes before have shown is this; the present stretch has shown nothing yet. */
    private void begin(double newBefore, double newSigma, long newAtNanos) {
        before = newBefore;
        sigmaBefore = newSigma;
        atBefore = newAtNanos;
        top.forget();
        how = Double.isNaN(before) ? How.ALONE : How.RAISES;
        stale = true;
    }

    /** So much of the best is no longer to be had. */
    void lowerBy(double amount) {
        join();
        begin(value - amount, sigma, atNanos);
    }

    private void join() {
        if (!stale && top.changes() == changes) {
            return;
        }
        changes = top.changes();
        boolean raises = how == How.RAISES;
        stale = false;
        // Most of the time it is enough to know that the top cannot be higher.
        if (raises && (!(top.most() > before) || !(top.value() > before))) {
            take(before, sigmaBefore, atBefore);
            return;
        }
        double apart = SURELY * sigmaOfMissing();
        if (how == How.ALONE || (how == How.SAME && -missing() > apart)) {
            take(top.value(), top.sigma(), top.atNanos());
            return;
        }
        double weight = weightOfTop();
        double joined = Math.min(before - weight * missing(), Math.max(before, top.value()));
        double raised = raises ? Math.max(joined, top.value() - apart) : joined;
        take(raised, Math.sqrt(weight) * top.sigma(), top.sigma() < sigmaBefore ? top.atNanos() : atBefore);
    }

    private double weightOfTop() {
        double larger = Math.max(sigmaBefore, top.sigma());
        if (!(larger > 0)) {
            return 0.5;
        }
        double own = top.sigma() / larger;
        double its = sigmaBefore / larger;
        return its * its / (own * own + its * its);
    }

    private void take(double newValue, double newSigma, long newAtNanos) {
        value = newValue;
        sigma = newSigma;
        atNanos = newAtNanos;
    }

    boolean known() {
        return !Double.isNaN(value());
    }

    double value() {
        join();
        return value;
    }

    double sigma() {
        join();
        return sigma;
    }

    long atNanos() {
        join();
        return atNanos;
    }
}
