package org.slugpeak.core.curve;

import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.slugpeak.core.word.Refused;

/**
 * The curve of a discriminator or ratio detector: levels of both signs against frequency. Each figure is a least-squares fit of a
 * cubic to the points around it, so that noise is averaged and the uncertainty comes from the points themselves:
 *
 * <ul>
 *   <li>zero and slope: {@code y = s (x - z) (1 + b (x - z) + c (x - z)^2)} within two fifths of the way to the peaks
 *   <li>a peak: {@code y = h + a (x - p)^2 + b (x - p)^3} within a good third of the way to it
 *   <li>the level at a swing: a cubic within a third of the way to a peak
 * </ul>
 *
 * <p>Immutable; any thread may use it.
 */
public final class SignedCurve {

    /** Less than this share of the highest level on the other side of zero may be noise or a wrong rest. */
    private static final double BOTH_SIGNS_SHARE = 0.1;

    private static final int FEWEST_BOTH_SIGNS = 2;
    private static final int FEWEST = 6;
    private static final double ZERO_REACH = 0.4;
    private static final double PEAK_REACH = 0.35;
    private static final double LEVEL_REACH = 0.33;

    /** Probability within one standard deviation of a normal distribution. */
    private static final double ONE_SIGMA = 0.8413447;

    private final List<ResponsePoint> points;
    private final ResponsePoint low;
    private final ResponsePoint high;
    private final double halfHz;
    private final Estimate zeroHz;
    private final Estimate slopePerHz;

    private SignedCurve(List<ResponsePoint> points) throws Refused {
        this.points = points;
        ResponsePoint most = extreme(+1);
        ResponsePoint least = extreme(-1);
        this.low = most.hz() < least.hz() ? most : least;
        this.high = most.hz() < least.hz() ? least : most;
        this.halfHz = (high.hz() - low.hz()) / 2;
        double first = crossing();
        double steep = (high.level() - low.level()) / halfHz;
        LeastSquaresFit fit = fit(
                first,
                ZERO_REACH,
                (x, p) -> p[1] * (x - p[0]) * (1 + p[2] * (x - p[0]) + p[3] * (x - p[0]) * (x - p[0])),
                0,
                steep * halfHz,
                0,
                0);
        this.zeroHz = new Estimate(first + halfHz * fit.parameter(0), halfHz * sigma(fit, 0));
        this.slopePerHz = new Estimate(fit.parameter(1), sigma(fit, 1)).times(1 / halfHz);
    }

    /**
     * A curve through points.
     *
     * @param points eight or more of both signs, in any order
     * @return the curve
     * @throws Refused where they do not show a zero between two peaks
     */
    public static SignedCurve through(List<ResponsePoint> points) throws Refused {
        if (points.size() < FEWEST + 2 || !hasBothSigns(points)) {
            throw new Refused("a curve with a zero needs eight points or more, some of them above zero and some below");
        }
        return new SignedCurve(ResponseCurve.sorted(points));
    }

    /**
     * Whether points are those of a discriminator: two or more on either side of zero, beyond a tenth of the highest level.
     *
     * @param points any
     * @return true where they are
     */
    public static boolean hasBothSigns(List<ResponsePoint> points) {
        double top = points.stream()
                .mapToDouble(point -> Math.abs(point.level()))
                .max()
                .orElse(0);
        return beyond(points, top, +1) >= FEWEST_BOTH_SIGNS && beyond(points, top, -1) >= FEWEST_BOTH_SIGNS;
    }

    private static long beyond(List<ResponsePoint> points, double top, int sign) {
        return points.stream()
                .filter(point -> sign * point.level() > BOTH_SIGNS_SHARE * top)
                .count();
    }

    private ResponsePoint extreme(int sign) {
        return points.stream()
                .max(Comparator.comparingDouble(point -> sign * point.level()))
                .orElseThrow();
    }

    /** Middle of the two points between the peaks where the sign changes; with noise, of the middle change. */
    private double crossing() throws Refused {
        double[] changes = new double[points.size()];
        int count = 0;
        for (int i = 1; i < points.size(); i++) {
            ResponsePoint left = points.get(i - 1);
            ResponsePoint right = points.get(i);
            boolean between = left.hz() >= low.hz() && right.hz() <= high.hz();
            if (between && left.level() * right.level() <= 0) {
                changes[count++] = (left.hz() + right.hz()) / 2;
            }
        }
        if (count == 0) {
            throw new Refused("there is no zero between the two peaks: take more points");
        }
        return changes[count / 2];
    }

    /** In units of half the distance of the peaks from a place; the nearest points where too few lie within reach. */
    private LeastSquaresFit fit(double atHz, double reach, LeastSquaresFit.Form form, double... start) throws Refused {
        List<ResponsePoint> near = points.stream()
                .sorted(Comparator.comparingDouble(point -> Math.abs(point.hz() - atHz)))
                .toList();
        long within = near.stream()
                .filter(point -> Math.abs(point.hz() - atHz) <= reach * halfHz)
                .count();
        List<ResponsePoint> used = near.subList(0, (int) Math.min(near.size(), Math.max(FEWEST, within)));
        double[] x =
                used.stream().mapToDouble(point -> (point.hz() - atHz) / halfHz).toArray();
        double[] y = used.stream().mapToDouble(ResponsePoint::level).toArray();
        return LeastSquaresFit.of(form, x, y, start);
    }

    /** Few points know their own scatter badly: Student's factor. */
    private static double sigma(LeastSquaresFit fit, int parameter) {
        return fit.sigma(parameter) * new TDistribution(fit.freedom()).inverseCumulativeProbability(ONE_SIGMA);
    }

    /**
     * Where the output is nil.
     *
     * @return Hz
     */
    public Estimate zeroHz() {
        return zeroHz;
    }

    /**
     * How steep the curve is at the zero.
     *
     * @return in the unit of the readings per Hz; negative where the output falls with frequency
     */
    public Estimate slopePerHz() {
        return slopePerHz;
    }

    /** One end of the curve's useful part. */
    public record Peak(Estimate hz, Estimate level, boolean isAtTheEdge) {}

    /**
     * The peak below the zero.
     *
     * @return where and how high; at the edge where the curve goes on beyond the first point
     * @throws Refused where the points do not determine it
     */
    public Peak lowerPeak() throws Refused {
        return peak(low);
    }

    /**
     * The peak above the zero.
     *
     * @return where and how high; at the edge where the curve goes on beyond the last point
     * @throws Refused where the points do not determine it
     */
    public Peak upperPeak() throws Refused {
        return peak(high);
    }

    private Peak peak(ResponsePoint at) throws Refused {
        double edge = PEAK_REACH / 2 * halfHz;
        if (at.hz() - points.get(0).hz() < edge || points.get(points.size() - 1).hz() - at.hz() < edge) {
            return new Peak(new Estimate(at.hz(), 0), new Estimate(at.level(), 0), true);
        }
        LeastSquaresFit fit = fit(
                at.hz(),
                PEAK_REACH,
                (x, p) -> p[1] + (x - p[0]) * (x - p[0]) * (p[2] + p[3] * (x - p[0])),
                0,
                at.level(),
                -at.level(),
                0);
        return new Peak(
                new Estimate(at.hz() + halfHz * fit.parameter(0), halfHz * sigma(fit, 0)),
                new Estimate(fit.parameter(1), sigma(fit, 1)),
                false);
    }

    /**
     * How unequal the peaks are.
     *
     * @return upper less lower, over their mean, as a fraction
     * @throws Refused where the points do not determine them
     */
    public Estimate peakAsymmetry() throws Refused {
        return unequal(lowerPeak().level(), upperPeak().level());
    }

    private static Estimate unequal(Estimate lower, Estimate upper) {
        double up = Math.abs(upper.value());
        double down = Math.abs(lower.value());
        double sum = up + down;
        double sigma = 4 * Math.hypot(down * upper.sigma(), up * lower.sigma()) / (sum * sum);
        return new Estimate(2 * (up - down) / sum, sigma);
    }

    /**
     * What the curve is over a swing about its zero.
     *
     * @param asymmetry level above less level below the zero, over their mean, as a fraction
     * @param bend how far the chord lies above the tangent at the zero, as a fraction of it; negative where the curve flattens
     */
    public record Swing(Estimate asymmetry, Estimate bend) {}

    /**
     * How straight the curve is.
     *
     * @param swingHz to either side of the zero, Hz; positive
     * @return both figures
     * @throws Refused where the points do not reach so far
     */
    public Swing swing(double swingHz) throws Refused {
        double from = zeroHz.value() - swingHz;
        double to = zeroHz.value() + swingHz;
        if (from < points.get(0).hz() || to > points.get(points.size() - 1).hz()) {
            throw new Refused("the points do not reach so far from the zero");
        }
        Estimate below = levelAt(from);
        Estimate above = levelAt(to);
        double tangent = 2 * swingHz * slopePerHz.value();
        double chord = above.value() - below.value();
        double sigma = Math.hypot(
                Math.hypot(above.sigma(), below.sigma()) / tangent,
                chord / tangent * slopePerHz.sigma() / slopePerHz.value());
        return new Swing(unequal(below, above), new Estimate(chord / tangent - 1, sigma));
    }

    private Estimate levelAt(double hz) throws Refused {
        LeastSquaresFit fit = fit(hz, LEVEL_REACH, (x, p) -> p[0] + x * (p[1] + x * (p[2] + x * p[3])), 0, 1, 0, 0);
        return new Estimate(fit.parameter(0), sigma(fit, 0));
    }

    /**
     * From the zero to the nearer peak.
     *
     * @return Hz
     */
    public double reachHz() {
        return Math.min(zeroHz.value() - low.hz(), high.hz() - zeroHz.value());
    }
}
