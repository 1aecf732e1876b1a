package org.slugpeak.core.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;

/**
 * Finds a peak, a dip or a zero in settled values, one for each step of a turn.
 *
 * <p><b>Definition.</b> A peak was passed at the first value that is lower than the value before it, where that was reached by a
 * rise; the top is the {@link Vertex} of the readings about it. A dip is a peak upside down; sizes count, without sign. A zero
 * lies between two neighbours of unlike sign, b the later: |b| / (|a| + |b|) steps back from b, give or take
 * (r / 2) / (|a| + |b|) with r the unit of the last digit: rounding both by r / 2 against each other shifts b and leaves the sum.
 *
 * <p><b>At the edges.</b> No verdict comes before the third value, but that the first move went the wrong way. Equal values are
 * a flat top as wide as they are. A step without a value (over range) has no size and breaks the run: nothing is concluded
 * across it. A null that the sign does not change across is no zero. What goes higher than the top was thought to be, beyond its
 * error, takes the pass back.
 *
 * <p><b>Why this way.</b> Rounding keeps order: of two settled values the one that shows less is less, so that a fall of one
 * digit is a fall and needs no threshold and no dwell. The direction of the hand is not known, so after a pass only values are
 * compared: it has returned where the value is at the best to within {@value PeakSteps#REPEATS_DB} dB, and no more is missing
 * to the top than its error and half a digit, or {@value PeakSteps#LEFT_DB} dB.
 *
 * <p>One thread at a time; a value costs the same however many came before, {@link #undo} as much as all of them.
 *
 * <p>Sources: the resolution as a half-width, JCGM 100:2008 F.2.2.1, from memory; one sigma of a rounded reading,
 * r / sqrt(12), the same place. The rest follows from the definitions here.
 */
public final class StepFinder {

    private record Step(long tNanos, double value) {}

    private final Seek seek;
    private final StepListener listener;
    private final List<Step> steps = new ArrayList<>();
    private StepHunt hunt;
    private boolean hushed;

    /**
     * A finder that has seen nothing yet.
     *
     * @param seek what is turned for
     * @param listener hears what is found
     */
    public StepFinder(Seek seek, StepListener listener) {
        this.seek = seek;
        this.listener = listener;
        this.hunt = newHunt();
    }

    private StepHunt newHunt() {
        return switch (seek) {
            case PEAK -> new PeakSteps(seek, (largest, resolution) -> Curve.ofPeak(resolution), this::tell);
            case DIP -> new PeakSteps(seek, Curve::ofDip, this::tell);
            case ZERO -> new ZeroSteps(this::tell);
        };
    }

    private void tell(Consumer<StepListener> finding) {
        if (!hushed) {
            finding.accept(listener);
        }
    }

    /**
     * Takes the value of the next step.
     *
     * @param tNanos when it came; only {@code bestAtNanos} makes use of it
     * @param value in one unit throughout, finite
     */
    public void accept(long tNanos, double value) {
        take(new Step(tNanos, value));
    }

    /**
     * Takes a step that gave no value, as the meter was over its range.
     *
     * @param tNanos when it came
     */
    public void acceptNone(long tNanos) {
        take(new Step(tNanos, Double.NaN));
    }

    private void take(Step step) {
        steps.add(step);
        play(step);
    }

    private void play(Step step) {
        if (Double.isNaN(step.value)) {
            hunt.skip();
        } else {
            hunt.take(step.tNanos, step.value);
        }
    }

    /**
     * Takes the last step back, as if it had never been given; nothing is said of those before it again.
     *
     * @return false where there is none
     */
    public boolean undo() {
        if (steps.isEmpty()) {
            return false;
        }
        steps.remove(steps.size() - 1);
        hunt = newHunt();
        hushed = true;
        steps.forEach(this::play);
        hushed = false;
        return true;
    }

    /** Forgets every value: the next adjuster is begun. */
    public void restart() {
        steps.clear();
        hunt = newHunt();
    }

    /**
     * The last value.
     *
     * @return as read; NaN where the last step gave none, and before the first
     */
    public double value() {
        return steps.isEmpty() ? Double.NaN : steps.get(steps.size() - 1).value;
    }

    /**
     * The best value so far.
     *
     * @return in the unit of the readings; 0 for a zero that was crossed or read; NaN until there is one
     */
    public double best() {
        return hunt.best();
    }

    /**
     * How well the best is known from the last digit of what was read.
     *
     * @return one sigma in the unit; NaN until it is known
     */
    public double bestSigma() {
        return hunt.bestSigma();
    }

    /**
     * The last value over the best.
     *
     * @return ratio; NaN where there is none of either, and for a zero
     */
    public double ofBest() {
        return hunt.ofBest();
    }

    /**
     * Which way the size of the reading went with the last step.
     *
     * @return steady too where it cannot be said
     */
    public Trend trend() {
        int last = steps.size() - 1;
        return last < 1 ? Trend.STEADY : StepHunt.trend(steps.get(last - 1).value, steps.get(last).value);
    }
}
