package org.slugpeak.core.peak;

/**
 * Hunts the zero of a discriminator: a point where the reading changes its sign between two swings. A null without a change
 * of sign is refused. Decibels have no meaning here; the swing on either side is the measure.
 */
final class ZeroHunt implements Seeker {

    private enum State {
        SEARCHING,
        PAST,
        BACK,
        HELD
    }

    /** A side counts once the reading has stood out of the noise by so many sigma. */
    private static final double STANDS_OUT = 5;
    /** The zero is reached within this part of the swing, or within {@link #SAME} sigma. */
    private static final double AT_ZERO = 0.01;

    private static final double HELD_WITHIN = 0.02;
    private static final double OVERSHOT = 0.03;
    private static final double SAME = 3;
    private static final double RECOVERED = 0.5;
    private static final double REACTION_SECONDS = 0.3;
    /** The swing has to stand out of the noise by so much before a null in it means anything. */
    private static final double SWING_STANDS_OUT = 20;

    private final Front front;
    private final PeakListener listener;
    private final long dwellNanos;
    private final Smoother level = new Smoother();
    private final Slope slope;

    private State state = State.SEARCHING;
    private double swing;
    private int side;
    private boolean crossed;
    private long crossedAtNanos;
    private int lastSign;
    private long signSinceNanos;
    private double deepest;
    private boolean quiet;
    private long quietSinceNanos;
    private boolean saidDead;
    private double sigma = Double.NaN;

    ZeroHunt(Front front, long dwellNanos, PeakListener listener) {
        this.front = front;
        this.slope = new Slope(front);
        this.listener = listener;
        this.dwellNanos = dwellNanos;
    }

    @Override
    public void block(long tNanos) {
        level.look(front.pyramid, front.noise, front.pace.blockSeconds());
        slope.moved();
        if (front.noise.seen() < 1) {
            return;
        }
        double size = Math.abs(level.value());
        swing = Math.max(swing, size - level.sigma());
        noteSign(tNanos);
        noteQuiet(tNanos, size);
        noteSide(tNanos, size);
        switch (state) {
            case SEARCHING -> watchDeadZero(tNanos);
            case PAST -> watchReturn(tNanos, size);
            case BACK -> watchDwell(tNanos, size);
            case HELD -> {}
        }
    }

    private void noteSign(long tNanos) {
        int sign = (int) Math.signum(level.value());
        if (sign != lastSign) {
            lastSign = sign;
            signSinceNanos = tNanos;
        }
    }

    private void noteQuiet(long tNanos, double size) {
        if (size > Math.max(HELD_WITHIN * swing, SAME * level.sigma())) {
            quiet = false;
        } else if (!quiet) {
            quiet = true;
            quietSinceNanos = tNanos;
        }
    }

    private void noteSide(long tNanos, double size) {
        boolean back = state == State.BACK || state == State.HELD;
        double least = Math.max((back ? OVERSHOT : AT_ZERO) * swing, STANDS_OUT * level.sigma());
        if (size <= least) {
            return;
        }
        int before = side;
        side = lastSign;
        if (before != 0 && before != side) {
            passed(tNanos);
        }
    }

    private void passed(long tNanos) {
        crossed = true;
        crossedAtNanos = signSinceNanos;
        sigma = level.sigma();
        deepest = Math.abs(level.value());
        state = State.PAST;
        listener.passed(tNanos, 0, crossedAtNanos, Double.NaN);
    }

    private void watchDeadZero(long tNanos) {
        boolean swung = swing > SWING_STANDS_OUT * level.sigma() && side != 0;
        if (swung && quiet && !saidDead && dwelt(tNanos, quietSinceNanos)) {
            saidDead = true;
            listener.noPeak(tNanos, NoPeakReason.DEAD_ZERO);
        }
    }

    private void watchReturn(long tNanos, double size) {
        deepest = Math.max(deepest, size);
        boolean near = size <= Math.max(AT_ZERO * swing, SAME * level.sigma());
        double towards = -Math.signum(level.value()) * slope.perSecond();
        boolean soon = towards > 0 && size <= towards * REACTION_SECONDS;
        if (size <= (1 - RECOVERED) * deepest && (near || soon)) {
            state = State.BACK;
            quiet = false;
            listener.returned(tNanos, level.value(), Double.NaN);
        }
    }

    private void watchDwell(long tNanos, double size) {
        if (quiet && dwelt(tNanos, quietSinceNanos) && slope.perSecond() == 0) {
            state = State.HELD;
            sigma = level.sigma();
            listener.held(tNanos, level.value(), Double.NaN);
        } else if (size > 2 * OVERSHOT * swing && size > STANDS_OUT * level.sigma() && slope.perSecond() == 0) {
            state = State.PAST;
            deepest = size;
        }
    }

    private boolean dwelt(long tNanos, long since) {
        return Elapsed.nanos(since, tNanos) >= dwellNanos;
    }

    @Override
    public void gap() {
        slope.clear();
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
        state = State.SEARCHING;
        level.clear();
        slope.clear();
        swing = 0;
        side = 0;
        crossed = false;
        lastSign = 0;
        quiet = false;
        saidDead = false;
        sigma = Double.NaN;
    }

    @Override
    public double smoothed() {
        return level.shown();
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
        return (int) Math.signum(slope.perSecond() * Math.signum(level.value()));
    }
}
