package org.slugpeak.cli.arithmetic;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.scale.CalibrationLine;
import org.slugpeak.core.scale.DialAdvice;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.scale.ScaleEstimate;

/** Words and tables of {@code slugpeak scale}. */
public final class ScaleText {

    private ScaleText() {}

    /**
     * The known points.
     *
     * @param points ascending
     * @return a table
     */
    public static String points(List<KnownPoint> points) {
        Table table = new Table("dial kHz", "true kHz", "dial is off by", "");
        for (KnownPoint each : points) {
            table.row(kHz(each.dialHz()), kHz(each.trueHz()), signedKhz(each.dialErrorHz()) + " kHz", percent(each));
        }
        return table.text();
    }

    private static String percent(KnownPoint point) {
        return String.format(Locale.ROOT, "%+.2f %%", Rounded.to(point.dialErrorPercent(), 2));
    }

    /**
     * Corrections at regular dial marks.
     *
     * @param scale the dial
     * @param stepHz distance of the marks, Hz, positive
     * @return a table; only marks between the known points
     */
    public static String corrections(DialScale scale, double stepHz) {
        Table table = new Table("dial kHz", "true kHz", "correction", "+-");
        double last = scale.points().get(scale.points().size() - 1).dialHz();
        long first = (long) Math.ceil(scale.points().get(0).dialHz() / stepHz - 1e-9);
        for (long mark = first; mark * stepHz <= last * (1 + 1e-12); mark++) {
            double dial = mark * stepHz;
            scale.trueAt(dial)
                    .ifPresent(
                            it -> table.row(kHz(dial), kHz(it.hz()), signedKhz(it.hz() - dial), kHz(it.combinedHz())));
        }
        return table.text();
    }

    /**
     * What to set the dial to.
     *
     * @param trueHz wanted, Hz
     * @param dial answer
     * @return one line
     */
    public static String setting(double trueHz, ScaleEstimate dial) {
        return "set the dial to " + kHz(dial.hz()) + " kHz to get " + kHz(trueHz) + " kHz (" + uncertainty(dial) + ")";
    }

    /**
     * What a dial setting gives.
     *
     * @param dialHz setting, Hz
     * @param truth answer
     * @return one line
     */
    public static String reading(double dialHz, ScaleEstimate truth) {
        return "dial " + kHz(dialHz) + " kHz gives " + kHz(truth.hz()) + " kHz (" + uncertainty(truth) + ")";
    }

    private static String uncertainty(ScaleEstimate estimate) {
        String sigma = "+- " + kHz(estimate.sigmaHz()) + " kHz, one sigma";
        return Double.isNaN(estimate.bowHz())
                ? sigma + "; with two points nothing is known of a bend between them: add a third"
                : sigma + "; a bend of the scale may add " + kHz(estimate.bowHz()) + " kHz";
    }

    /**
     * The refusal to answer outside the known points.
     *
     * @param hz asked, Hz
     * @param lowHz lower end of what is known, Hz
     * @param highHz upper end, Hz
     * @param kind {@code dial} or {@code true}
     * @return one line
     */
    public static String outside(double hz, double lowHz, double highHz, String kind) {
        return kHz(hz) + " kHz lies outside the known points (" + kind + " " + kHz(lowHz) + " to " + kHz(highHz)
                + " kHz): a dial is not to be trusted beyond them; measure a point on the other side of it";
    }

    /**
     * What the dial as a whole is off by.
     *
     * @param line corrections against dial
     * @return one line
     */
    public static String line(CalibrationLine line) {
        return String.format(
                Locale.ROOT,
                "as a straight line: correction %+.3f kHz %+.3f %% of the dial, points scatter by %.3f kHz",
                Rounded.to(line.offset() / 1e3, 3),
                Rounded.to(100 * line.slope(), 3),
                line.scatter() / 1e3);
    }

    /**
     * What to do about a receiver's dial.
     *
     * @param advice in the order to follow
     * @return one line each
     */
    public static String advice(List<DialAdvice> advice) {
        return advice.isEmpty()
                ? "the dial is right: leave the oscillator alone"
                : advice.stream().map(ScaleText::sentence).collect(Collectors.joining(System.lineSeparator()));
    }

    private static String sentence(DialAdvice advice) {
        String way = advice.more() ? "more" : "less";
        String effect = kHz(advice.effectHz()) + " kHz";
        return switch (advice.adjuster()) {
            case TRIMMER ->
                "oscillator trimmer: " + way + " capacitance (it puts the high end off by about " + effect + ")";
            case PADDER -> "padder: " + way + " capacitance (it puts the low end off by about " + effect + ")";
            case SLUG ->
                "oscillator slug: " + way + " inductance, " + (advice.more() ? "slug in" : "slug out")
                        + " (it puts the low end off by about " + effect + ")";
            case POINTER ->
                "first check the pointer on its reference mark: the error is the same percentage everywhere";
            case MIDDLE ->
                "the middle stays off by about " + effect
                        + " when both ends are right: no adjuster does that; check the IF, and the gang's plates";
        };
    }

    private static String kHz(double hz) {
        return String.format(Locale.ROOT, "%.2f", hz / 1e3);
    }

    private static String signedKhz(double hz) {
        return String.format(Locale.ROOT, "%+.2f", Rounded.to(hz / 1e3, 2));
    }
}
