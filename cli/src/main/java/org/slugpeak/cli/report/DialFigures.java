package org.slugpeak.cli.report;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import org.slugpeak.core.curve.Estimate;

/**
 * Dial errors of a session by their true frequencies, with one sigma: a dial is read within its last digit (JCGM 100:2008, F.2.2.1),
 * the finest that the session shows, in kHz below 3 MHz and in MHz above, as dials are marked; where a point was taken more than once, with half of what lies
 * between its lowest and its highest as the half-width of a rectangle (4.3.7).
 * All methods are pure.
 */
final class DialFigures {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private DialFigures() {}

    /** As the set was found: of what was taken more than once at a frequency the first. In Hz. */
    static Map<Double, Estimate> found(List<DialError> points) {
        return of(points, (first, later) -> first);
    }

    /** As the set was left: of what was taken more than once at a frequency the last. In Hz. */
    static Map<Double, Estimate> left(List<DialError> points) {
        return of(points, (first, later) -> later);
    }

    private static Map<Double, Estimate> of(List<DialError> points, BinaryOperator<DialError> which) {
        Map<Double, DialError> chosen = new TreeMap<>();
        points.forEach(point -> chosen.merge(point.hz(), point, which));
        Map<Double, Estimate> figures = new TreeMap<>();
        chosen.forEach((hz, point) -> figures.put(
                hz,
                new Estimate(
                        point.errorHz(),
                        Math.hypot(lastDigitHz(points, hz) / TurnLimits.ROOT_12, scatterHz(points, point)))));
        return figures;
    }

    private static double lastDigitHz(List<DialError> points, double atHz) {
        double unitHz = atHz < MEGAHERTZ_FROM_HZ ? 1e3 : 1e6;
        return points.stream()
                .filter(point -> point.hz() < MEGAHERTZ_FROM_HZ == atHz < MEGAHERTZ_FROM_HZ)
                .map(point -> lastDigit(point.hz() + point.errorHz(), unitHz))
                .min(Comparator.naturalOrder())
                .orElse(1.0);
    }

    /** One unit of the last place of a dial, Hz; a dial is not read more finely than to 1 Hz. */
    private static double lastDigit(double dialHz, double unitHz) {
        BigDecimal written = BigDecimal.valueOf(Math.rint(dialHz))
                .divide(BigDecimal.valueOf(unitHz))
                .stripTrailingZeros();
        return unitHz * Math.pow(10, -Math.max(0, written.scale()));
    }

    private static double scatterHz(List<DialError> points, DialError of) {
        DoubleSummaryStatistics same = points.stream()
                .filter(point -> point.hz() == of.hz() && point.after() == of.after())
                .mapToDouble(DialError::errorHz)
                .summaryStatistics();
        return (same.getMax() - same.getMin()) / 2 / Math.sqrt(3);
    }
}
