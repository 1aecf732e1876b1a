package org.slugpeak.core.peak;

/**
 * The best so far: what the tops of earlier passes say together, and the top of the present stretch. Two looks at the same top
 * are joined, each weighted by the inverse of its variance; so every pass makes the best surer.
 */
final class Best {

    /** A level is surely higher than the best beyond so many sigma of the difference. */
    private static final double SURELY = 2;

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
    private double before = Double.NaN;
    private double sigmaBefore = Double.NaN;
    private long atBefore;

    Best(Front front) {
        top = new Top(front);
    }

    Top top() {
        return top;
    }

    /** The present top is lower than the best, but the best is no longer to be had. */
    void lower() {
        how = How.ALONE;
    }

    /** The present top is the same as that of the pass before. */
    void same() {
        if (how == How.RAISES) {
            how = How.SAME;
        }
    }

    /** What is higher than this by chance alone. */
    double missing() {
        return how == How.ALONE ? 0 : before - top.value();
    }

    double sigmaOfMissing() {
        return how == How.ALONE ? top.sigma() : Sigma.ofDifference(sigmaBefore, top.sigma());
    }

    /** A new stretch begins. */
    void settle() {
        double value = value();
        double sigma = sigma();
        long at = atNanos();
        top.forget();
        before = value;
        sigmaBefore = sigma;
        atBefore = at;
        how = Double.isNaN(value) ? How.ALONE : How.RAISES;
    }

    void forget() {
        top.forget();
        how = How.ALONE;
        before = Double.NaN;
    }

    boolean known() {
        return !Double.isNaN(value());
    }

    private boolean alone() {
        return how == How.ALONE || (how == How.SAME && -missing() > SURELY * sigmaOfMissing());
    }

    private boolean idle() {
        return how == How.RAISES && !(top.value() > before);
    }

    double value() {
        if (alone()) {
            return top.value();
        }
        if (idle()) {
            return before;
        }
        double joined = Math.min(before - weight() * missing(), Math.max(before, top.value()));
        return how == How.SAME ? joined : Math.max(joined, top.value() - SURELY * sigmaOfMissing());
    }

    /** Of the present top, when joined with those before. */
    private double weight() {
        double larger = Math.max(sigmaBefore, top.sigma());
        if (!(larger > 0)) {
            return 0.5;
        }
        double own = top.sigma() / larger;
        double its = sigmaBefore / larger;
        return its * its / (own * own + its * its);
    }

    double sigma() {
        if (alone()) {
            return top.sigma();
        }
        if (idle()) {
            return sigmaBefore;
        }
        return Math.sqrt(weight()) * top.sigma();
    }

    long atNanos() {
        return alone() || (!idle() && top.sigma() < sigmaBefore) ? top.atNanos() : atBefore;
    }
}
