package org.slugpeak.core.steps;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;

/** Seeks the largest or the smallest size; for the rules see {@link StepFinder}. One thread at a time. */
final class PeakSteps implements StepHunt {

    /** A slug that is set back comes to the same reading within so much; chosen: what a run on the bench ends within. */
    static final double REPEATS_DB = 0.05;

    /** What may be missing at most when the hand is told to stop, beyond what is not known better; chosen, as elsewhere. */
    static final double LEFT_DB = 0.15;

    /** The laws that a reading may follow near what is sought, from the largest size so far and the last digit. */
    interface Laws {
        List<Curve> of(double largest, double resolution);
    }

    private final Seek seek;
    private final Laws laws;
    private final Teller teller;
    private final LastDigit digit = new LastDigit();

    private boolean signSaid;
    private boolean nearedEver;
    private boolean wrongWaySaid;
    private double largest;
    private double best = Double.NaN;
    private long bestAtNanos;
    private double last = Double.NaN;

    /** Size before the present run of equal values; NaN where the run was not reached by coming nearer. */
    private double beforeRun = Double.NaN;

    private int run;
    private Optional<Vertex> top = Optional.empty();
    private Optional<Overshoot> past = Optional.empty();

    PeakSteps(Seek seek, Laws laws, Teller teller) {
        this.seek = seek;
        this.laws = laws;
        this.teller = teller;
    }

    @Override
    public void take(long tNanos, double value) {
        sign(tNanos, value);
        digit.see(value);
        largest = Math.max(largest, Math.abs(value));
        Trend trend = StepHunt.trend(last, value);
        if (Double.isNaN(last)) {
            begin();
        } else if (trend == seek.away()) {
            leave(tNanos, value);
        } else {
            approach(tNanos, value, trend);
        }
        if (Double.isNaN(best) || StepHunt.trend(best, value) == seek.nearer()) {
            best = value;
            bestAtNanos = tNanos;
        }
        last = value;
    }

    private void sign(long tNanos, double value) {
        if (!signSaid && value < 0) {
            signSaid = true;
            teller.tell(listener -> listener.hint(tNanos, Hint.NEGATIVE_GOING, value));
        }
    }

    private void begin() {
        beforeRun = Double.NaN;
        run = 1;
    }

    private void leave(long tNanos, double value) {
        boolean turned = !Double.isNaN(beforeRun);
        if (turned && isNear(Math.abs(last))) {
            pass(tNanos, new Crest(beforeRun, Math.abs(last), run, Math.abs(value)), value);
        } else if (turned || (!nearedEver && !wrongWaySaid)) {
            double lostDb = apartDb(best, value);
            wrongWaySaid = true;
            teller.tell(listener -> listener.hint(tNanos, Hint.WRONG_WAY, lostDb));
        } else {
            past.ifPresent(it -> it.step(tNanos, seek.away(), seek.away()));
        }
        begin();
    }

    private void pass(long tNanos, Crest crest, double value) {
        Vertex vertex = vertex(crest);
        double sign = best < 0 ? -1 : 1;
        StepsBack back = new StepsBack(
                1 + crest.halfWidth() - vertex.offset(),
                vertex.offsetError(),
                sign * vertex.height() + 0.0,
                vertex.heightError());
        top = Optional.of(vertex);
        past = Optional.of(new Overshoot(back, teller));
        double dropDb = apartDb(best, value);
        teller.tell(listener -> listener.passed(tNanos, best, bestAtNanos, dropDb, back));
    }

    /** Reckoned with sizes near 1, so that neither squares nor sums leave the range of numbers. */
    private Vertex vertex(Crest crest) {
        int exponent = Math.getExponent(largest);
        double resolution = Math.scalb(digit.resolution(), -exponent);
        List<Curve> curves = laws.of(Math.scalb(largest, -exponent), resolution);
        return Vertex.of(crest.scaled(-exponent), curves, resolution).scaled(exponent);
    }

    private void approach(long tNanos, double value, Trend trend) {
        if (trend == Trend.STEADY) {
            run++;
        } else {
            nearedEver = true;
            beforeRun = Math.abs(last);
            run = 1;
        }
        past.ifPresent(it -> it.step(tNanos, trend, seek.away()));
        if (top.isPresent() && trend == seek.nearer()) {
            compare(tNanos, value, top.get());
        }
    }

    /** On the way back, or on the way to another top. */
    private void compare(long tNanos, double value, Vertex vertex) {
        double missing = seek.better(vertex.height(), Math.abs(value));
        double known = Double.isNaN(vertex.heightError()) ? 0 : vertex.heightError() + digit.resolution() / 2;
        double allowed = Math.max(known, Decibels.lost(LEFT_DB) * vertex.height());
        if (missing < -allowed) {
            top = Optional.empty();
            past = Optional.empty();
            teller.tell(listener -> listener.noPeak(tNanos, NoPeakReason.REVERSED));
        } else if (past.isPresent() && isNear(Math.abs(value))) {
            double lossDb = missing > 0 ? apartDb(vertex.height(), value) : 0;
            if (missing <= allowed) {
                past = Optional.empty();
                teller.tell(listener -> listener.returned(tNanos, value, lossDb));
            } else {
                teller.tell(listener -> listener.hint(tNanos, Hint.STOPPED_SHORT, lossDb));
            }
        }
    }

    /** Whether a size is the best, or so near that a slug set back to it may read so. */
    private boolean isNear(double size) {
        double least = Math.abs(best);
        double slack = Decibels.lost(REPEATS_DB) * least;
        return seek.better(least, size) <= slack;
    }

    /** A zero may have been as much as half the last digit, so that decibels stay finite. */
    private double apartDb(double from, double to) {
        double least = Math.max(digit.resolution() / 2, Double.MIN_VALUE);
        double there = Decibels.of(Math.max(Math.abs(from), least));
        return Math.abs(there - Decibels.of(Math.max(Math.abs(to), least)));
    }

    @Override
    public void skip() {
        last = Double.NaN;
        nearedEver = true;
        past = Optional.empty();
        top = Optional.empty();
    }

    @Override
    public double best() {
        return best;
    }

    @Override
    public double bestSigma() {
        return Rounding.sigma(digit.resolution());
    }

    @Override
    public double ofBest() {
        double ratio = last / best;
        return Double.isFinite(ratio) ? ratio : Double.NaN;
    }
}
