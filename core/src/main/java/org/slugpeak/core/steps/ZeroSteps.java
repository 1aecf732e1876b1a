package org.slugpeak.core.steps;

import java.util.Optional;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Trend;

/** Seeks the zero between a positive and a negative swing; for the rules see {@link StepFinder}. One thread at a time. */
final class ZeroSteps implements StepHunt {

    /** At the zero, as a part of the largest swing; chosen, the same part as where readings follow a turning hand. */
    private static final double AT_ZERO = 0.01;

    private final Teller teller;
    private final LastDigit digit = new LastDigit();

    private double last = Double.NaN;
    private long lastAtNanos;
    /** The last value that was not zero; 0 where none is joined to the present one. */
    private double side;

    private int nulls;
    private double swing;
    private boolean moved;
    private boolean nullSeen;
    private boolean crossed;
    private Optional<Overshoot> past = Optional.empty();

    ZeroSteps(Teller teller) {
        this.teller = teller;
    }

    @Override
    public void take(long tNanos, double value) {
        digit.see(value);
        swing = Math.max(swing, Math.abs(value));
        if (side * value < 0) {
            cross(tNanos, value);
        } else if (!Double.isNaN(last)) {
            move(tNanos, value);
        }
        watchReturn(tNanos, value);
        nulls = value == 0 ? nulls + 1 : 0;
        nullSeen = nullSeen || value == 0;
        side = value == 0 ? side : value;
        last = value;
        lastAtNanos = tNanos;
    }

    /** Nulls between the two sides lie on the same straight line, and each of them may be the zero. */
    private void cross(long tNanos, double value) {
        double apart = Math.abs(value) + Math.abs(side);
        int stepsApart = nulls + 1;
        double error = Math.max(stepsApart * digit.resolution() / 2 / apart, (nulls - 1) / 2.0);
        StepsBack back = new StepsBack(stepsApart * Math.abs(value) / apart, error, 0, Double.NaN);
        long nearestAtNanos = Math.abs(value) < Math.abs(last) ? tNanos : lastAtNanos;
        crossed = true;
        past = Optional.of(new Overshoot(back, teller));
        teller.tell(listener -> listener.passed(tNanos, 0, nearestAtNanos, Double.NaN, back));
    }

    private void move(long tNanos, double value) {
        Trend trend = StepHunt.trend(last, value);
        if (!moved && trend == Trend.RISING && last != 0) {
            teller.tell(listener -> listener.hint(tNanos, Hint.WRONG_WAY, Double.NaN));
        }
        if (nulls > 0 && value != 0 && side != 0 && !crossed) {
            teller.tell(listener -> listener.noPeak(tNanos, NoPeakReason.DEAD_ZERO));
        }
        moved = moved || trend != Trend.STEADY;
        past.ifPresent(it -> it.step(tNanos, trend, Trend.RISING));
    }

    private void watchReturn(long tNanos, double value) {
        boolean near = Math.abs(value) <= Math.max(AT_ZERO * swing, digit.resolution() / 2);
        if (past.isPresent() && near) {
            past = Optional.empty();
            teller.tell(listener -> listener.returned(tNanos, value, Double.NaN));
        }
    }

    @Override
    public void skip() {
        last = Double.NaN;
        side = 0;
        nulls = 0;
        moved = true;
    }

    @Override
    public double best() {
        return crossed || nullSeen ? 0 : Double.NaN;
    }

    @Override
    public double bestSigma() {
        return crossed || nullSeen ? Rounding.sigma(digit.resolution()) : Double.NaN;
    }

    @Override
    public double ofBest() {
        return Double.NaN;
    }
}
