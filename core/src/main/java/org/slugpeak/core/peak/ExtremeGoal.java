package org.slugpeak.core.peak;

import java.util.function.DoubleSupplier;
import org.slugpeak.core.decibel.Decibels;

/**
 * The highest level. A dip is the highest of the negated magnitudes.
 *
 * <p>Lower than it was the best becomes only by what can have lowered it: a turn of the generator that was seen ({@link Signal}), or a drift
 * that was measured while nothing was turned ({@link Dwell}). A lower maximum in the same travel is another one.
 */
final class ExtremeGoal implements HuntGoal {

    /** A fall that is smaller is not worth turning back for. */
    private static final double LEAST_FALL = Decibels.lost(0.05);
    /** After the return, so small a loss is good enough. */
    private static final double GOOD_ENOUGH = Decibels.lost(0.2);
    /** A dip that was taken for a pass may come again: only what is deeper by this factor is told. */
    private static final double DEEPER = 1.5;
    /** Whoever turned back at a word has seen more; that is no dip of the signal. */
    private static final double DEEPEST_DIP = Decibels.lost(0.75);
    /** Two maxima are surely not the same beyond so many sigma of their difference. */
    private static final double SURELY_SAME = 3;
    /** The pass is taken back when the level rises beyond its best by this. */
    private static final double BEYOND = Decibels.lost(0.3);

    private final Sight sight;
    private final PeakListener listener;
    private final Orientation orientation;

    private final TurnDetector turns;
    private final Best best;
    private final Travel travel;
    private final Signal signal;
    private final Haste haste;
    private final Return comingBack;
    private final Dwell dwell;
    private final Tops tops;
    private final Underside underside;

    /** Asked for only where it is told: a logarithm at each block would be felt. */
    private final DoubleSupplier fallDb = this::belowBestDb;

    private double bestAtPass = Double.NaN;
    private double sigmaAtPass;
    private double bottom = Double.NaN;

    ExtremeGoal(Sight sight, Orientation orientation, long dwellNanos, PeakListener listener) {
        this.sight = sight;
        this.listener = listener;
        this.orientation = orientation;
        this.turns = new TurnDetector(sight.sway);
        this.best = new Best(sight.front);
        this.travel = new Travel(sight, listener, orientation);
        this.signal = new Signal(best, listener);
        this.haste = new Haste(listener);
        this.comingBack = new Return(sight, best, haste);
        this.dwell = new Dwell(sight, best, dwellNanos, listener);
        this.tops = new Tops(listener, orientation);
        this.underside = new Underside(orientation);
        restart();
    }

    @Override
    public Seen look(long tNanos) {
        double level = sight.level.value();
        boolean lost = false;
        if (!signal.isSettled()) {
            Signal.Seen seen = signal.look(tNanos, sight);
            if (seen == Signal.Seen.AWAY) {
                return Seen.NO_SIGNAL;
            }
            lost = seen == Signal.Seen.OTHER_LEVEL || level > bestAtPass + beyondMargin();
        }
        best.top().look(level);
        underside.look(tNanos, sight);
        sight.front.noise.alone(!underside.standsOut());
        bottom = Double.isNaN(bottom) ? level : Math.min(bottom, level);
        if (lost) {
            searchAgain();
            return Seen.LOST;
        }
        return seen(tNanos, turns.look(sight.front.pyramid, sight.front.noise));
    }

    private Seen seen(long tNanos, TurnDetector.Turn turn) {
        if (turn == TurnDetector.Turn.NONE) {
            return Seen.NOTHING;
        }
        turns.restart(sight.blockSeconds());
        return switch (turn) {
            case UP -> {
                beginStretch();
                yield Seen.TOWARDS;
            }
            case DOWN -> Seen.AWAY;
            case BEGAN_DOWN -> {
                if (underside.standsOut()) {
                    travel.wrongWay(tNanos, fallDb);
                }
                yield Seen.NOTHING;
            }
            default -> Seen.NOTHING;
        };
    }

    /** From here on another top may come; this level is the first of it. */
    private void beginStretch() {
        best.settle();
        best.top().look(sight.level.value());
    }

    private void searchAgain() {
        bestAtPass = Double.NaN;
        turns.least(LEAST_FALL);
        if (turns.direction() < 0) {
            turns.assumeUp(sight.blockSeconds());
        }
    }

    @Override
    public void search(long tNanos) {
        if (underside.standsOut()) {
            travel.look(tNanos, turns);
            travel.lookAway(tNanos, turns, fallDb);
        } else {
            travel.lookInNoise(tNanos);
        }
    }

    @Override
    public boolean passes(long tNanos, boolean before) {
        double level = sight.level.value();
        if (!underside.standsOut() || !best.isMissedBy(level)) {
            // A mean fell that the smoothed reading does not follow: without a drop there is nothing to turn back for
            // yet.
            turns.assumeUp(sight.blockSeconds());
            return false;
        }
        double missing = best.missing();
        boolean same = missing <= SURELY_SAME * best.sigmaOfMissing() + LEAST_FALL * Math.abs(best.value());
        if (same) {
            best.same();
        }
        boolean asGood = tops.isTheSame(best, missing);
        boolean passed = same || asGood || !before;
        if (passed) {
            pass(tNanos, asGood && !same ? best.top().value() : best.value());
        } else if (tops.lower(tNanos, best, bottom)) {
            travel.passed(tNanos);
        }
        bottom = level;
        return passed;
    }

    /** The hand shall come back to a level that it has reached just now. */
    private void pass(long tNanos, double backTo) {
        haste.passed(tNanos);
        bestAtPass = best.value();
        sigmaAtPass = best.sigma();
        turns.least(LEAST_FALL);
        comingBack.begin(backTo);
        dwell.passed(tNanos);
        travel.passed(tNanos);
        listener.passed(tNanos, orientation.asRead(best.value()), best.atNanos(), belowBestDb());
        tops.passed(tNanos, best.value());
    }

    @Override
    public void past(long tNanos) {
        comingBack.look(tNanos);
        dwell.watchRest(tNanos, comingBack.hasRecovered());
        travel.lookAway(tNanos, turns, fallDb);
    }

    @Override
    public void takeBack(long tNanos) {
        bestAtPass = Double.NaN;
        tellReversed(tNanos);
    }

    private void tellReversed(long tNanos) {
        double deeper = DEEPER * comingBack.dip() / Math.abs(best.value());
        turns.least(Math.max(LEAST_FALL, Math.min(deeper, DEEPEST_DIP)));
        listener.noPeak(tNanos, NoPeakReason.REVERSED);
    }

    /** Whether the level has risen so far beyond the best of the pass, or is so small in its noise, that it was no maximum at all. */
    @Override
    public boolean isBeyond(long tNanos, boolean held) {
        if (!held && !underside.standsOut()) {
            searchAgain();
            tellReversed(tNanos);
            return true;
        }
        if (!(best.value() > bestAtPass + beyondMargin())) {
            return false;
        }
        boolean another = tops.higher(bestAtPass, bottom);
        searchAgain();
        if (!another && !held) {
            tellReversed(tNanos);
        }
        return true;
    }

    private double beyondMargin() {
        return BEYOND * Math.abs(bestAtPass) + 2 * SURELY_SAME * sigmaAtPass;
    }

    @Override
    public boolean isBack(long tNanos) {
        return comingBack.isBack(turns.direction() > 0);
    }

    @Override
    public void returned(long tNanos) {
        if (turns.direction() < 0) {
            turns.assumeUp(sight.blockSeconds());
            beginStretch();
        }
        turns.least(GOOD_ENOUGH);
        haste.returned(tNanos);
        listener.returned(tNanos, orientation.asRead(sight.level.value()), belowBestDb());
    }

    @Override
    public Stay stay(long tNanos, long sinceNanos) {
        Stay stay = dwell.stay(tNanos, sinceNanos);
        if (stay == Stay.SHORT) {
            comingBack.missed(dwell.loss());
            turns.least(LEAST_FALL);
        }
        return stay;
    }

    @Override
    public void held(long tNanos) {
        listener.held(tNanos, orientation.asRead(sight.level.value()), belowBestDb());
    }

    @Override
    public void gap() {
        turns.restart(sight.blockSeconds());
    }

    @Override
    public void interrupted() {
        turns.assumeDown(sight.blockSeconds());
    }

    @Override
    public void jump(long tNanos, double before) {
        if (underside.standsOut()) {
            signal.jumped(tNanos, before);
        }
        travel.gap();
    }

    @Override
    public void restart() {
        best.forget();
        signal.restart();
        travel.restart();
        comingBack.restart();
        dwell.restart();
        tops.restart();
        underside.restart();
        bestAtPass = Double.NaN;
        bottom = Double.NaN;
        haste.restart();
        turns.least(LEAST_FALL);
        turns.forget(sight.blockSeconds());
    }

    @Override
    public double smoothed() {
        return orientation.asRead(sight.level.shown());
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
        double level = sight.level.value();
        return level >= best.value() ? 0 : Decibels.apart(level, best.value());
    }

    @Override
    public int trend() {
        return orientation.ofMagnitude(sight.slope.perSecond());
    }
}
