package org.slugpeak.core.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.receiver.TrackingCircuit;
import org.slugpeak.core.receiver.TrackingPoints;

/**
 * Finds which adjuster of the oscillator makes a receiver's dial wrong, and which way it must go. The three known points are
 * compared with the circuit of {@link TrackingCircuit}: the trimmer and the low-end part that would give these errors are
 * solved for together, so a padder that also shifts the high end is not blamed on the trimmer. Oscillator above the signal.
 * Refused with an {@link IllegalArgumentException} unless the points ascend. Immutable; any thread may use it.
 *
 * @param intermediateHz intermediate frequency, Hz
 * @param low known point near the low end
 * @param middle known point between
 * @param high known point near the high end
 * @param lowEndPart what sets the low end
 */
public record ReceiverDial(
        double intermediateHz, KnownPoint low, KnownPoint middle, KnownPoint high, LowEndPart lowEndPart) {

    /** Errors of the same sign that differ by less than this part of the largest look like a slipped pointer. */
    private static final double POINTER_SPREAD = 0.25;

    public ReceiverDial {
        if (!(low.trueHz() < middle.trueHz() && middle.trueHz() < high.trueHz())) {
            throw new IllegalArgumentException("give the three points from the low end to the high end");
        }
    }

    /**
     * What to do, the greatest effect first.
     *
     * @param tolerance what is good enough, as a fraction of the frequency, for example 0.005
     * @return empty where all three points are within the tolerance; a pointer that may have slipped comes first
     */
    public List<DialAdvice> advice(double tolerance) {
        List<DialAdvice> advice = new ArrayList<>();
        if (!isWrong(low, tolerance) && !isWrong(middle, tolerance) && !isWrong(high, tolerance)) {
            return List.of();
        }
        Optional<TrackingCircuit> present = TrackingSolution.explaining(this);
        present.ifPresentOrElse(
                circuit -> addAdjusters(advice, circuit, tolerance), () -> addEachEnd(advice, tolerance));
        advice.sort((one, other) -> Double.compare(other.effectHz(), one.effectHz()));
        if (looksLikePointer()) {
            advice.add(0, new DialAdvice(DialAdvice.Adjuster.POINTER, false, Math.abs(middle.dialErrorHz())));
        }
        return List.copyOf(advice);
    }

    private void addAdjusters(List<DialAdvice> advice, TrackingCircuit present, double tolerance) {
        TrackingCircuit right = design();
        double trimmerHz = present.errorHz(high.dialHz(), intermediateHz)
                - present.withTrimmer(right.trimmerFarad()).errorHz(high.dialHz(), intermediateHz);
        double lowHz = present.errorHz(low.dialHz(), intermediateHz)
                - withLowEndOf(present, right).errorHz(low.dialHz(), intermediateHz);
        add(advice, DialAdvice.Adjuster.TRIMMER, trimmerHz, tolerance * high.trueHz());
        add(advice, lowAdjuster(), lowHz, tolerance * low.trueHz());
        double unexplainedHz = middle.trueHz() - middle.dialHz() - present.errorHz(middle.dialHz(), intermediateHz);
        add(advice, DialAdvice.Adjuster.MIDDLE, unexplainedHz, tolerance * middle.trueHz());
    }

    /** Errors beyond any circuit like this one: each end by itself, to come near enough for the next look. */
    private void addEachEnd(List<DialAdvice> advice, double tolerance) {
        add(advice, DialAdvice.Adjuster.TRIMMER, -high.dialErrorHz(), tolerance * high.trueHz());
        add(advice, lowAdjuster(), -low.dialErrorHz(), tolerance * low.trueHz());
    }

    /** An oscillator that a part makes too high wants more of that part. */
    private static void add(
            List<DialAdvice> advice, DialAdvice.Adjuster adjuster, double oscillatorHighByHz, double toleranceHz) {
        if (Math.abs(oscillatorHighByHz) > toleranceHz) {
            advice.add(new DialAdvice(adjuster, oscillatorHighByHz > 0, Math.abs(oscillatorHighByHz)));
        }
    }

    private DialAdvice.Adjuster lowAdjuster() {
        return lowEndPart == LowEndPart.PADDER ? DialAdvice.Adjuster.PADDER : DialAdvice.Adjuster.SLUG;
    }

    private TrackingCircuit withLowEndOf(TrackingCircuit circuit, TrackingCircuit right) {
        return lowEndPart == LowEndPart.PADDER
                ? circuit.withPadder(right.padderFarad())
                : circuit.withOscillatorCoil(right.oscillatorCoilHenry());
    }

    /** The circuit as it should be; the signal coil's value cancels out of every frequency. */
    TrackingCircuit design() {
        return TrackingCircuit.exactAt(
                TrackingSolution.ANY_COIL_HENRY,
                intermediateHz,
                new TrackingPoints(low.trueHz(), middle.trueHz(), high.trueHz()));
    }

    private static boolean isWrong(KnownPoint point, double tolerance) {
        return Math.abs(point.dialErrorHz()) > tolerance * point.trueHz();
    }

    private boolean looksLikePointer() {
        double least = Math.min(low.dialErrorPercent(), Math.min(middle.dialErrorPercent(), high.dialErrorPercent()));
        double most = Math.max(low.dialErrorPercent(), Math.max(middle.dialErrorPercent(), high.dialErrorPercent()));
        return least * most > 0 && most - least < POINTER_SPREAD * Math.max(Math.abs(least), Math.abs(most));
    }
}
