package org.slugpeak.core.peak;

/**
 * The zero of a discriminator: a point where the reading changes its sign between two swings. A null without a change
 * of sign is refused. Decibels have no meaning here; the swing on either side is the measure.
 */
final class ZeroGoal implements HuntGoal {

    /** The other side counts once the reading has stood out of the noise there by so many sigma. */
    private static final double STANDS_OUT = 5;
    /**
     * A swing, and with it the first side, counts only from so many: noise about nothing is none. Chosen: more than a mean of normal noise
     * ever shows, and far below the swing of a discriminator.
     */
    private static final double SWINGS = 8;
    /** The zero is reached within this part of the swing, or within {@link #SAME} sigma. */
    private static final double AT_ZERO = 0.01;

    private static final double HELD_WITHIN = 0.02;
    private static final double OVERSHOT = 0.03;
    private static final double SAME = 3;
    private static final double RECOVERED = 0.5;
    /** The swing has to stand out of the noise by so much before a null in it means anything. */
    private static final double SWING_STANDS_OUT = 20;

    private final Sight sight;
    private final PeakListener listener;
    private final long dwellNanos;

    private double swing;
    private int side;
    private boolean wasAt;
    private boolean crossed;
    private long crossedAtNanos;
    private int lastSign;
    private long signSinceNanos;
    private double deepest;
    private boolean quiet;
    private long quietSinceNanos;
    private boolean saidDead;
    private double sigma = Double.NaN;

    ZeroGoal(Sight sight, long dwellNanos, PeakListener listener) {
        this.sight = sight;
        this.listener = listener;
        this.dwellNanos = dwellNanos;
    }

    private double level() {
        return sight.level.value();
    }

    private double size() {
        return Math.abs(sight.level.value());
    }

    private double sigmas(double many) {
        return many * sight.level.sigma();
    }

    /** Surely more than noise, as well as the noise is known by now. */
    private boolean isSwing() {
        return size() > sigmas(SWINGS * sight.front.noise.margin());
    }

    @Override
    public Seen look(long tNanos) {
        if (isSwing()) {
            swing = Math.max(swing, size() - sight.level.sigma());
        }
        noteSign(tNanos);
        noteQuiet(tNanos);
        return hasChangedSides() ? Seen.AWAY : Seen.NOTHING;
    }

    private void noteSign(long tNanos) {
        int sign = (int) Math.signum(level());
        if (sign != lastSign) {
            lastSign = sign;
            signSinceNanos = tNanos;
        }
    }

    private void noteQuiet(long tNanos) {
        if (size() > Math.max(HELD_WITHIN * swing, sigmas(SAME))) {
            quiet = false;
        } else if (!quiet) {
            quiet = true;
            quietSinceNanos = tNanos;
        }
    }

    private boolean hasChangedSides() {
        if (swing == 0 || size() <= Math.max((wasAt ? OVERSHOT : AT_ZERO) * swing, sigmas(STANDS_OUT))) {
            return false;
        }
        int before = side;
        side = lastSign;
        return before != 0 && before != side;
    }

    @Override
    public void search(long tNanos) {
        boolean swung = swing > sigmas(SWING_STANDS_OUT) && side != 0;
        if (swung && quiet && !saidDead && dwelt(tNanos)) {
            saidDead = true;
            listener.noPeak(tNanos, NoPeakReason.DEAD_ZERO);
        }
    }

    private boolean dwelt(long tNanos) {
        return Elapsed.nanos(quietSinceNanos, tNanos) >= dwellNanos;
    }

    @Override
    public boolean passes(long tNanos, boolean before) {
        crossed = true;
        wasAt = false;
        crossedAtNanos = signSinceNanos;
        sigma = sight.level.sigma();
        deepest = size();
        listener.passed(tNanos, 0, crossedAtNanos, Double.NaN);
        return true;
    }

    @Override
    public void past(long tNanos) {
        deepest = Math.max(deepest, size());
    }

    @Override
    public void takeBack(long tNanos) {}

    @Override
    public boolean isBeyond(long tNanos, boolean held) {
        return false;
    }

    @Override
    public boolean isBack(long tNanos) {
        boolean near = size() <= Math.max(AT_ZERO * swing, sigmas(SAME));
        double towards = -Math.signum(level()) * sight.slope.perSecond();
        boolean soon = towards > 0 && size() <= towards * Hunt.REACTION_SECONDS;
        return size() <= (1 - RECOVERED) * deepest && (near || soon);
    }

    @Override
    public void returned(long tNanos) {
        wasAt = true;
        quiet = false;
        listener.returned(tNanos, level(), Double.NaN);
    }

    @Override
    public Stay stay(long tNanos, long sinceNanos) {
        boolean stands = sight.slope.perSecond() == 0;
        if (quiet && stands && dwelt(tNanos)) {
            sigma = sight.level.sigma();
            return Stay.HELD;
        }
        if (stands && size() > 2 * OVERSHOT * swing && size() > sigmas(STANDS_OUT)) {
            wasAt = false;
            deepest = size();
            return Stay.SHORT;
        }
        return Stay.WAITS;
    }

    @Override
    public void held(long tNanos) {
        listener.held(tNanos, level(), Double.NaN);
    }

    @Override
    public void gap() {
        quiet = false;
    }

    @Override
    public void interrupted() {}

    @Override
    public void jump(long tNanos, double before) {
        side = 0;
    }

    @Override
    public void restart() {
        swing = 0;
        side = 0;
        wasAt = false;
        crossed = false;
        lastSign = 0;
        quiet = false;
        saidDead = false;
        sigma = Double.NaN;
    }

    @Override
    public double best() {
        return crossed ? 0 : Double.NaN;
    }

    @Override
    public double bestSigma() {
        return sigma;
    }

    @Override
    public long bestAtNanos() {
        return crossedAtNanos;
    }

    @Override
    public double belowBestDb() {
        return Double.NaN;
    }

    @Override
    public int trend() {
        return (int) Math.signum(sight.slope.perSecond() * Math.signum(level()));
    }

    @Override
    public double smoothed() {
        return sight.level.shown();
    }
}
