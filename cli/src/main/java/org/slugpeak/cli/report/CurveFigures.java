package org.slugpeak.cli.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.slugpeak.cli.words.ComparePhrase;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.curve.Passband;
import org.slugpeak.core.curve.ResponseCurve;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.curve.SignedCurve;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.word.Refused;

/**
 * Centre and widths of a response curve, or the zero of a discriminator, with one sigma. An edge is known as well as the level there: by noise and last
 * digit at the edge and at the top, and by what a straight line between two points leaves out, an eighth of the second difference as
 * the half-width of a rectangle (JCGM 100:2008, 4.3.7). How much that moves the edge the curve itself shows. How well the generator's frequency is known is not
 * in it. All methods are pure.
 */
final class CurveFigures {

    private static final double[] DOWN_DB = {3, 6, 20};

    private final ResponseCurve curve;
    private final double sigma;

    private CurveFigures(ResponseCurve curve, double step) {
        this.curve = curve;
        this.sigma = Math.hypot(curve.noise(), Double.isFinite(step) ? step / TurnLimits.ROOT_12 : 0);
    }

    /** Points that can be part of a curve. */
    static List<ResponsePoint> points(SessionStory story) {
        return story.curve().stream()
                .filter(point -> point.hz() > 0 && Double.isFinite(point.level()))
                .map(point -> new ResponsePoint(point.hz(), point.level()))
                .toList();
    }

    /** Whether it is the curve of a discriminator. */
    static boolean hasZero(SessionStory story) {
        return SignedCurve.hasBothSigns(points(story));
    }

    /** In Hz, by what they are called; empty where there is no curve, or too little of one. */
    static Map<String, Estimate> of(SessionStory story) {
        List<ResponsePoint> points = points(story);
        try {
            if (SignedCurve.hasBothSigns(points)) {
                return Map.of(
                        ComparePhrase.ZERO.of(), SignedCurve.through(points).zeroHz());
            }
            return new CurveFigures(
                            ResponseCurve.through(points), story.levels().smallestStep())
                    .figures();
        } catch (Refused tooLittle) {
            return Map.of();
        }
    }

    private Map<String, Estimate> figures() {
        Map<String, Estimate> figures = new LinkedHashMap<>();
        figure(DOWN_DB[0], Passband::centreHz, 0.5).ifPresent(it -> figures.put(ComparePhrase.CENTRE.of(), it));
        for (double downDb : DOWN_DB) {
            figure(downDb, Passband::widthHz, 1)
                    .ifPresent(it -> figures.put(ComparePhrase.WIDTH.of(Numbers.plain(downDb)), it));
        }
        return figures;
    }

    /** What both edges give; each takes part in it with a weight. */
    private Optional<Estimate> figure(double downDb, ToDoubleFunction<Passband> which, double weight) {
        return curve.passband(downDb).map(band -> {
            double sigmaDb = sigmaDb(downDb);
            double lowHz = curve.passband(downDb + sigmaDb).map(Passband::lowHz).orElse(Double.NaN) - band.lowHz();
            double highHz =
                    curve.passband(downDb + sigmaDb).map(Passband::highHz).orElse(Double.NaN) - band.highHz();
            return new Estimate(which.applyAsDouble(band), weight * Math.hypot(lowHz, highHz));
        });
    }

    private double sigmaDb(double downDb) {
        double top = curve.highest().level();
        double atTopDb = Decibels.of(1 + sigma / top);
        double atEdgeDb = Decibels.of(1 + sigma / (top * Decibels.ratio(-downDb)));
        return Math.hypot(Math.hypot(atTopDb, atEdgeDb), bendDb() / 8 / Math.sqrt(3));
    }

    /** The greatest second difference of three points in the upper 20 dB, dB. */
    private double bendDb() {
        List<ResponsePoint> points = curve.points();
        double greatest = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            double here = downDb(points.get(i));
            if (here < DOWN_DB[2]) {
                double bend = downDb(points.get(i - 1)) - 2 * here + downDb(points.get(i + 1));
                greatest = Math.max(greatest, Math.abs(bend));
            }
        }
        return greatest;
    }

    private double downDb(ResponsePoint point) {
        return Decibels.of(curve.highest().level() / point.level());
    }
}
