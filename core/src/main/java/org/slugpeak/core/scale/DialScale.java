package org.slugpeak.core.scale;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.interpolation.NevilleInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.slugpeak.core.word.Refused;

/**
 * A dial with known points. Between them it is taken as straight: that cannot overshoot, and so cannot turn a dial that rises
 * into one that falls, as a smooth curve through few points can. What it may be wrong by is told beside every value, from the
 * parabola through the nearest three points. Outside the known points there is no answer. Immutable; any thread may use it.
 */
public final class DialScale {

    private final List<KnownPoint> points;
    private final double sigmaDialHz;
    private final double[] dials;
    private final double[] trues;
    private final PolynomialSplineFunction trueOfDial;
    private final PolynomialSplineFunction dialOfTrue;

    private DialScale(List<KnownPoint> points, double sigmaDialHz) {
        this.points = points;
        this.sigmaDialHz = sigmaDialHz;
        this.dials = points.stream().mapToDouble(KnownPoint::dialHz).toArray();
        this.trues = points.stream().mapToDouble(KnownPoint::trueHz).toArray();
        this.trueOfDial = new LinearInterpolator().interpolate(dials, trues);
        this.dialOfTrue = new LinearInterpolator().interpolate(trues, dials);
    }

    /**
     * A scale through known points.
     *
     * @param points two or more, in any order
     * @param sigmaDialHz standard uncertainty of reading or setting the dial, Hz, not negative
     * @return the scale
     * @throws Refused where there are too few points, where two stand at one
     *     mark, or where the true frequency does not rise with the dial
     */
    public static DialScale through(List<KnownPoint> points, double sigmaDialHz) throws Refused {
        if (points.size() < 2) {
            throw new Refused("a scale needs two known points or more");
        }
        List<KnownPoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(KnownPoint::dialHz));
        for (int i = 1; i < sorted.size(); i++) {
            refuseDisorder(sorted.get(i - 1), sorted.get(i));
        }
        return new DialScale(List.copyOf(sorted), sigmaDialHz);
    }

    private static void refuseDisorder(KnownPoint lower, KnownPoint upper) throws Refused {
        String both =
                String.format(java.util.Locale.ROOT, "%.3f and %.3f kHz", lower.dialHz() / 1e3, upper.dialHz() / 1e3);
        if (lower.dialHz() == upper.dialHz()) {
            throw new Refused("two points stand at one dial mark: " + both + "; keep one of them");
        }
        if (lower.trueHz() >= upper.trueHz()) {
            throw new Refused("the true frequency falls while the dial rises between " + both
                    + "; one of them is mistaken, perhaps a harmonic or the wrong station");
        }
    }

    /**
     * The known points.
     *
     * @return ascending
     */
    public List<KnownPoint> points() {
        return points;
    }

    /**
     * What a dial setting truly gives.
     *
     * @param dialHz Hz
     * @return the frequency; empty outside the known points
     */
    public Optional<ScaleEstimate> trueAt(double dialHz) {
        if (!trueOfDial.isValidPoint(dialHz)) {
            return Optional.empty();
        }
        int segment = segment(dialHz);
        return Optional.of(
                new ScaleEstimate(trueOfDial.value(dialHz), sigmaHz(segment, dialHz), bowHz(segment, dialHz)));
    }

    /**
     * What to set the dial to for a true frequency.
     *
     * @param trueHz Hz
     * @return the dial setting; its uncertainties are those of the frequency, seen on the dial; empty outside the known
     *     points
     */
    public Optional<ScaleEstimate> dialFor(double trueHz) {
        if (!dialOfTrue.isValidPoint(trueHz)) {
            return Optional.empty();
        }
        double dialHz = dialOfTrue.value(trueHz);
        int segment = segment(dialHz);
        double slope = slope(segment);
        return Optional.of(new ScaleEstimate(dialHz, sigmaHz(segment, dialHz) / slope, bowHz(segment, dialHz) / slope));
    }

    private int segment(double dialHz) {
        int segment = 0;
        while (segment < dials.length - 2 && dialHz > dials[segment + 1]) {
            segment++;
        }
        return segment;
    }

    private double slope(int segment) {
        return (trues[segment + 1] - trues[segment]) / (dials[segment + 1] - dials[segment]);
    }

    private double sigmaHz(int segment, double dialHz) {
        double t = (dialHz - dials[segment]) / (dials[segment + 1] - dials[segment]);
        double below = (1 - t) * points.get(segment).sigmaHz();
        double above = t * points.get(segment + 1).sigmaHz();
        return Math.sqrt(below * below + above * above + Math.pow(slope(segment) * sigmaDialHz, 2));
    }

    private double bowHz(int segment, double dialHz) {
        if (dials.length < 3) {
            return Double.NaN;
        }
        double straight = trueOfDial.value(dialHz);
        double bow = 0;
        for (int first = Math.max(0, segment - 1); first <= Math.min(segment, dials.length - 3); first++) {
            double[] x = {dials[first], dials[first + 1], dials[first + 2]};
            double[] y = {trues[first], trues[first + 1], trues[first + 2]};
            bow = Math.max(
                    bow, Math.abs(new NevilleInterpolator().interpolate(x, y).value(dialHz) - straight));
        }
        return bow;
    }
}
