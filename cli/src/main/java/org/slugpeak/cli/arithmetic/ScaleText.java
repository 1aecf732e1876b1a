package org.slugpeak.cli.arithmetic;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.ScalePhrase;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.scale.CalibrationLine;
import org.slugpeak.core.scale.DialAdvice;
import org.slugpeak.core.scale.DialScale;
import org.slugpeak.core.scale.KnownPoint;
import org.slugpeak.core.scale.ScaleEstimate;

/** Words and tables of {@code slugpeak scale}. */
public final class ScaleText {

    /** How well the true frequencies of a generator's dial are known, where nobody says otherwise. */
    public static final String USUAL_KNOWN_TO = "10Hz";

    /** How well that dial can be read and set, where nobody says otherwise. */
    public static final String USUAL_READ_TO = "0.5kHz";

    private ScaleText() {}

    /**
     * The known points.
     *
     * @param points ascending
     * @return a table
     */
    public static String points(List<KnownPoint> points) {
        Table table = new Table(ScalePhrase.DIAL.of(), ScalePhrase.TRUE.of(), ScalePhrase.OFF_BY.of(), "");
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
        Table table = new Table(ScalePhrase.DIAL.of(), ScalePhrase.TRUE.of(), ScalePhrase.CORRECTION.of(), "+-");
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
        return ScalePhrase.SET_DIAL.of(kHz(dial.hz()), kHz(trueHz), uncertainty(dial));
    }

    /**
     * What a dial setting gives.
     *
     * @param dialHz setting, Hz
     * @param truth answer
     * @return one line
     */
    public static String reading(double dialHz, ScaleEstimate truth) {
        return ScalePhrase.GIVES.of(kHz(dialHz), kHz(truth.hz()), uncertainty(truth));
    }

    private static String uncertainty(ScaleEstimate estimate) {
        String sigma = kHz(estimate.sigmaHz());
        return Double.isNaN(estimate.bowHz())
                ? ScalePhrase.BEND_UNKNOWN.of(sigma)
                : ScalePhrase.BEND.of(sigma, kHz(estimate.bowHz()));
    }

    /**
     * The refusal to tell what a dial setting gives outside the known points.
     *
     * @param hz asked, Hz
     * @param lowHz lower end of the dial as far as it is known, Hz
     * @param highHz upper end, Hz
     * @return one line
     */
    public static String outsideOfDial(double hz, double lowHz, double highHz) {
        return ScalePhrase.OUTSIDE_DIAL.of(Frequencies.plain(hz), Frequencies.plain(lowHz), Frequencies.plain(highHz));
    }

    /**
     * The refusal to tell what gives a frequency outside the known points.
     *
     * @param hz asked, Hz
     * @param lowHz lowest true frequency that is known, Hz
     * @param highHz highest, Hz
     * @return one line
     */
    public static String outsideOfTrue(double hz, double lowHz, double highHz) {
        return ScalePhrase.OUTSIDE_TRUE.of(Frequencies.plain(hz), Frequencies.plain(lowHz), Frequencies.plain(highHz));
    }

    /**
     * What will be set without a mark.
     *
     * @param hz frequencies outside the known points, one or more, Hz
     * @param lowHz lowest true frequency that is known, Hz
     * @param highHz highest, Hz
     * @return one line
     */
    public static String noMarks(List<Double> hz, double lowHz, double highHz) {
        String all = hz.stream().map(Frequencies::plain).collect(Collectors.joining(", "));
        return ScalePhrase.NO_MARKS.of(all, Frequencies.plain(lowHz), Frequencies.plain(highHz));
    }

    /**
     * What the dial as a whole is off by.
     *
     * @param line corrections against dial
     * @return one line
     */
    public static String line(CalibrationLine line) {
        return ScalePhrase.LINE.of(
                Rounded.to(line.offset() / 1e3, 3), Rounded.to(100 * line.slope(), 3), line.scatter() / 1e3);
    }

    /**
     * What to do about a receiver's dial.
     *
     * @param advice in the order to follow
     * @return one line each
     */
    public static String advice(List<DialAdvice> advice) {
        return advice.isEmpty()
                ? ScalePhrase.RIGHT.of()
                : advice.stream().map(ScaleText::sentence).collect(Collectors.joining(System.lineSeparator()));
    }

    private static String sentence(DialAdvice advice) {
        String effect = kHz(advice.effectHz());
        return switch (advice.adjuster()) {
            case TRIMMER -> (advice.more() ? ScalePhrase.TRIMMER_MORE : ScalePhrase.TRIMMER_LESS).of(effect);
            case PADDER -> (advice.more() ? ScalePhrase.PADDER_MORE : ScalePhrase.PADDER_LESS).of(effect);
            case SLUG -> (advice.more() ? ScalePhrase.SLUG_IN : ScalePhrase.SLUG_OUT).of(effect);
            case POINTER -> ScalePhrase.POINTER.of();
            case MIDDLE -> ScalePhrase.MIDDLE.of(effect);
        };
    }

    private static String kHz(double hz) {
        return String.format(Locale.ROOT, "%.2f", hz / 1e3);
    }

    private static String signedKhz(double hz) {
        return String.format(Locale.ROOT, "%+.2f", Rounded.to(hz / 1e3, 2));
    }
}
