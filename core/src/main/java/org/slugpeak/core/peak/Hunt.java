package org.slugpeak.core.peak;

/**
 * Hunts the highest level. A dip is hunted as the peak of the negated magnitude.
 *
 * <pre>
 *               fall before any rise: hint wrong-way
 *                    +------+
 *                    v      |
 *   start -----> SEARCHING -+---- fall after a rise: passed ----> PAST
 *                    ^                                            |  ^
 *                    |   rises well beyond the old best           |  | fall: passed again
 *                    +--------------------------------------------+  | (the best aged, if it
 *                    |                                            |  |  was out of reach)
 *                    |                    back at best: returned  v  |
 *                    +------------------------------------------ BACK
 *                    |                                            |  ^ fall: passed -> PAST
 *                    |                    dwelt there: held       v  |
 *                    +------------------------------------------ HELD
 * </pre>
 */
final class Hunt implements Seeker {

    private enum State {
        SEARCHING,
        PAST,
        BACK,
        HELD
    }

    /** A fall that is smaller is not worth turning back for. */
    private static final double LEAST_FALL = Decibels.part(0.05);
    /**
     * So near the best is at it: what a set that drifts by 1 dB a minute loses in the 3 s of turning round, and no more than a
     * fall that is not worth turning back for. More so for each time that the best had to be lowered.
     */
    private static final double NEAR = Decibels.part(0.05);
    /** Where nothing moves any more although the hand turns, it is at the top; only a lowered top is missed by so much. */
    private static final double STALLED_WITHIN = Decibels.part(0.1);
    /** After the return, so small a loss is good enough. */
    private static final double GOOD_ENOUGH = Decibels.part(0.2);
    /** What may be missing after the dwell, noise included. */
    private static final double HELD_WITHIN = Decibels.part(0.15);
    /** Where noise explains less than this part of that, the dwell is enough. */
    private static final double QUIET = 0.25;
    /** Where noise leaves that open the verdict waits, but not longer than so many dwells. */
    private static final double MOST_DWELLS = 1.75;
    /**
     * Then nothing may be missing at first, so that a lucky moment does not end the search; but so many sigma more each time that the hand
     * has stopped short: the more often in vain, the likelier the best itself is too high by chance.
     */
    private static final double EACH_TIME = 0.5;
    /** The mean over this part of the dwell counts: the hand comes to rest in the first quarter. */
    private static final double OF_DWELL = 0.75;
    /** A hand needs this long to stop, or to turn round: what comes sooner after a word does not follow from it. */
    private static final double REACTION_SECONDS = 0.3;
    /** A return has to make good this part of what was lost. */
    private static final double RECOVERED = 0.5;
    /** Levels are the same within so many sigma of their difference. */
    private static final double SAME = 1;

    private static final double SURELY = 2;
    private static final double SURELY_SAME = 3;
    /** A single wild mean shall not decide that the level is back; where its noise is more than {@link #NEAR}, one twice as long has to. */
    private static final double STEADY_SECONDS = 0.35;
    /** The pass is taken back when the level rises beyond its best by this. */
    private static final double BEYOND = Decibels.part(0.3);

    private final Front front;
    private final PeakListener listener;
    private final Orientation orientation;
    private final long dwellNanos;

    private final Smoother level = new Smoother();
    private final Slope slope;
    private final TurnTest test = new TurnTest();
    private final Best best;
    private final Travel travel;
    private final Jump jump = new Jump();

    private State state = State.SEARCHING;
    private long passedAtNanos;
    private double bestAtPass;
    private double sigmaAtPass;
    private double deepest;
    private int aged;
    private double bottom = Double.NaN;
    private long backSinceNanos;
    private boolean dwellBegins;
    private int stoppedShort;
    private double firstTop = Double.NaN;
    private double firstDip = Double.NaN;
    private double lowerTop = Double.NaN;

    Hunt(Front front, Orientation orientation, long dwellNanos, PeakListener listener) {
        this.front = front;
        this.slope = new Slope(front);
        this.best = new Best(front);
        this.orientation = orientation;
        this.dwellNanos = dwellNanos;
        this.listener = listener;
        this.travel = new Travel(listener, orientation);
        restart();
    }

    @Override
    public void block(long tNanos) {
        level.look(front.pyramid, front.noise, front.pace.blockSeconds());
        slope.moved();
        if (front.noise.seen() < 1) {
            return;
        }
        keepBest(tNanos);
        bottom = Double.isNaN(bottom) ? level.value() : Math.min(bottom, level.value());
        turned(tNanos, test.look(front.pyramid, front.noise));
        switch (state) {
            case SEARCHING -> {
                travel.look(tNanos, test, slope, front);
                lookAway(tNanos);
            }
            case PAST -> {
                lookAway(tNanos);
                watchReturn(tNanos);
            }
            case BACK -> watchDwell(tNanos);
            case HELD -> watchBeyond(tNanos);
        }
    }

    private void lookAway(long tNanos) {
        if (travel.turnsAway(tNanos, test, level, slope)) {
            travel.wrongWay(tNanos, belowBestDb());
        }
    }

    private void keepBest(long tNanos) {
        if (jump.pending()) {
            if (!jump.settled(tNanos)) {
                return;
            }
            settleJump(tNanos);
        }
        best.top().look(level.value());
    }

    private void settleJump(long tNanos) {
        boolean lowered = jump.lowered(level.value());
        jump.clear();
        if (lowered && best.known()) {
            double amount = Decibels.apart(level.value(), best.value());
            best.forget();
            state = State.SEARCHING;
            test.least(LEAST_FALL);
            listener.hint(tNanos, Hint.BEST_AGED, amount);
        } else if (state != State.SEARCHING && level.value() > bestAtPass + beyondMargin()) {
            state = State.SEARCHING;
            test.least(LEAST_FALL);
        }
    }

    private void turned(long tNanos, TurnTest.Turn turn) {
        switch (turn) {
            case NONE -> {}
            case BEGAN_UP -> test.restart(front.pace.blockSeconds());
            case BEGAN_DOWN -> {
                test.restart(front.pace.blockSeconds());
                travel.wrongWay(tNanos, belowBestDb());
            }
            case UP -> {
                test.restart(front.pace.blockSeconds());
                beginStretch();
                risen(tNanos);
            }
            case DOWN -> {
                test.restart(front.pace.blockSeconds());
                fallen(tNanos);
                bottom = level.value();
            }
        }
    }

    /** From here on another top may come; this level is the first of it. */
    private void beginStretch() {
        best.settle();
        best.top().look(level.value());
    }

    /** A rise so soon after the pass is none of the hand's doing: nothing was passed. */
    private void risen(long tNanos) {
        if (state == State.PAST && Elapsed.seconds(passedAtNanos, tNanos) < REACTION_SECONDS) {
            state = State.SEARCHING;
            listener.noPeak(tNanos, NoPeakReason.REVERSED);
        }
    }

    private void fallen(long tNanos) {
        if (!best.isMissedBy(level.value())) {
            // A mean fell that the smoothed reading does not follow: without a drop there is nothing to turn back for
            // yet.
            test.assumeUp(front.pace.blockSeconds());
            return;
        }
        double missing = best.missing();
        double explained = SURELY_SAME * best.sigmaOfMissing() + LEAST_FALL * size(best.value());
        if (state == State.SEARCHING || missing <= explained) {
            best.same();
            pass(tNanos);
        } else {
            lowerTop(tNanos, missing);
        }
    }

    /** A maximum below the best: the best is out of reach by now, or it is another maximum, or the hand dithers. */
    private void lowerTop(long tNanos, double missing) {
        double missingDb = Decibels.apart(best.top().value(), best.value());
        boolean cameBack = best.top().value() - bottom >= Tops.CAME_BACK * (best.value() - bottom);
        boolean again = !Double.isNaN(lowerTop) && Decibels.apart(best.top().value(), lowerTop) <= Tops.SAME_TOP_DB;
        if (again || (cameBack && missingDb <= Tops.AGES_BY_DB) || state != State.PAST) {
            best.lower();
            aged++;
            listener.hint(tNanos, Hint.BEST_AGED, missingDb);
            pass(tNanos);
        } else if (Decibels.apart(bottom, best.top().value()) >= Tops.LEAST_DIP_DB && missing > 0) {
            lowerTop = best.top().value();
            twoPeaks(tNanos, best.value(), best.top().value(), bottom);
        }
    }

    private void pass(long tNanos) {
        state = State.PAST;
        passedAtNanos = tNanos;
        bestAtPass = best.value();
        sigmaAtPass = best.sigma();
        deepest = best.value() - level.value();
        test.least(LEAST_FALL);
        travel.passed(tNanos);
        listener.passed(tNanos, orientation.asRead(best.value()), best.atNanos(), belowBestDb());
        if (!Double.isNaN(firstTop)) {
            twoPeaks(tNanos, firstTop, best.value(), firstDip);
            firstTop = Double.NaN;
        }
    }

    private void twoPeaks(long tNanos, double first, double second, double dip) {
        double dipDb = Decibels.apart(dip, Math.min(first, second));
        listener.twoPeaks(tNanos, orientation.asRead(first), orientation.asRead(second), dipDb);
    }

    private void watchReturn(long tNanos) {
        double loss = best.value() - level.value();
        deepest = Math.max(deepest, loss);
        if (watchBeyond(tNanos)) {
            return;
        }
        double good = (1 - RECOVERED) * deepest;
        boolean heard = Elapsed.seconds(passedAtNanos, tNanos) >= REACTION_SECONDS;
        if (heard && loss <= good && rising() && lossOver(STEADY_SECONDS) <= good && isBack(loss)) {
            returned(tNanos);
        }
    }

    private boolean rising() {
        return test.direction() > 0 || slope.perSecond() > 0;
    }

    private boolean isBack(double loss) {
        double lead = REACTION_SECONDS + front.pace.intervalSeconds() / 2;
        boolean soon = slope.secondsToTop(best.value()) <= lead;
        boolean stalled = slope.perSecond() == 0 && loss <= STALLED_WITHIN * size(best.value());
        double near = NEAR * size(best.value());
        boolean noisy = uncertainty(STEADY_SECONDS) > near;
        double seconds = noisy ? 2 * STEADY_SECONDS : STEADY_SECONDS;
        return soon || stalled || lossOver(seconds) <= Math.max((1 + aged) * near, SAME * uncertainty(seconds));
    }

    private void returned(long tNanos) {
        state = State.BACK;
        backSinceNanos = tNanos;
        if (test.direction() < 0) {
            test.assumeUp(front.pace.blockSeconds());
            beginStretch();
        }
        test.least(GOOD_ENOUGH);
        listener.returned(tNanos, orientation.asRead(level.value()), belowBestDb());
    }

    private void watchDwell(long tNanos) {
        if (watchBeyond(tNanos)) {
            return;
        }
        if (dwellBegins) {
            dwellBegins = false;
            backSinceNanos = tNanos;
        }
        long dwelt = Elapsed.nanos(backSinceNanos, tNanos);
        double seconds = OF_DWELL * 1e-9 * dwelt;
        if (dwelt < dwellNanos || slope.movesWithin(seconds)) {
            return;
        }
        double loss = lossOver(seconds);
        boolean late = dwelt >= MOST_DWELLS * dwellNanos;
        if (loss <= allowedLoss(SURELY * uncertainty(seconds), late)) {
            state = State.HELD;
            listener.held(tNanos, orientation.asRead(level.value()), belowBestDb());
        } else if (late) {
            state = State.PAST;
            deepest = loss;
            stoppedShort++;
            test.least(LEAST_FALL);
            listener.hint(tNanos, Hint.STOPPED_SHORT, Decibels.apart(best.value() - loss, best.value()));
        }
    }

    private double allowedLoss(double unsure, boolean late) {
        double within = HELD_WITHIN * size(best.value());
        if (unsure <= QUIET * within) {
            return within + unsure;
        }
        double surelyWithin = within - unsure;
        return late ? Math.max(surelyWithin, stoppedShort * EACH_TIME * unsure / SURELY) : surelyWithin;
    }

    /** Whether the level has risen so far beyond the best of the pass that it was no maximum at all. */
    private boolean watchBeyond(long tNanos) {
        if (jump.pending() || best.value() <= bestAtPass + beyondMargin()) {
            return false;
        }
        boolean deep = Decibels.apart(bottom, bestAtPass) >= Tops.SEPARATE_DB;
        if (deep) {
            firstTop = bestAtPass;
            firstDip = bottom;
        } else if (state != State.HELD) {
            listener.noPeak(tNanos, NoPeakReason.REVERSED);
        }
        state = State.SEARCHING;
        test.least(LEAST_FALL);
        if (test.direction() < 0) {
            test.assumeUp(front.pace.blockSeconds());
        }
        return true;
    }

    private double lossOver(double seconds) {
        return best.value() - front.pyramid.mean(front.level(seconds));
    }

    /** One sigma of a loss over so many seconds. */
    private double uncertainty(double seconds) {
        return Sigma.ofDifference(front.noise.sigma(front.level(seconds), best.value()), best.sigma());
    }

    private double beyondMargin() {
        return BEYOND * size(bestAtPass) + 2 * SURELY_SAME * sigmaAtPass;
    }

    private static double size(double value) {
        return Math.abs(value);
    }

    @Override
    public void gap() {
        slope.clear();
        dwellBegins = true;
        test.restart(front.pace.blockSeconds());
    }

    @Override
    public void interrupted() {
        if (state != State.SEARCHING) {
            test.assumeDown(front.pace.blockSeconds());
        }
    }

    @Override
    public void jump(long tNanos, double before) {
        jump.begin(tNanos, before);
    }

    @Override
    public void restart() {
        state = State.SEARCHING;
        level.clear();
        slope.clear();
        best.forget();
        jump.clear();
        travel.restart();
        aged = 0;
        stoppedShort = 0;
        bottom = Double.NaN;
        firstTop = Double.NaN;
        lowerTop = Double.NaN;
        test.least(LEAST_FALL);
        test.forget(front.pace.blockSeconds());
    }

    @Override
    public double smoothed() {
        return orientation.asRead(level.shown());
    }

    @Override
    public double best() {
        return orientation.asRead(best.value());
    }

    @Override
    public double bestSigma() {
        return best.sigma();
    }

    @Override
    public long bestAtNanos() {
        return best.atNanos();
    }

    @Override
    public double belowBestDb() {
        if (!best.known()) {
            return Double.NaN;
        }
        return level.value() >= best.value() ? 0 : Decibels.apart(level.value(), best.value());
    }

    @Override
    public int trend() {
        return orientation.ofMagnitude(slope.perSecond());
    }
}
