package org.slugpeak.cli.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.slugpeak.cli.arithmetic.Table;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.SafeHands;
import org.slugpeak.core.curve.CoupledFit;
import org.slugpeak.core.curve.Passband;
import org.slugpeak.core.curve.ResponseCurve;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.word.Refused;

/** A response curve in words and tables. All methods are pure. */
public final class CurveText {

    private static final double[] DOWN_DB = {3, 6, 20};
    private static final double SKIRT_HZ = 5e3;

    /** Common practice, no source. */
    private static final double EVEN_SKIRTS_DB = 1;

    /** A dip counts where it is deeper than three times the usual scatter of a reading. */
    private static final double DIP_DB = 0.3;

    /** Points that scatter by more of the highest level are not those of equal tanks on one frequency. */
    private static final double POOR_FIT = 0.03;

    private CurveText() {}

    /**
     * Everything that is known of a curve.
     *
     * @param curve as measured
     * @param centreHz where it should be centred, Hz; empty to take the middle of the -3 dB points
     * @param transformers how many the signal passes, for the model
     * @return lines
     */
    public static List<String> describe(ResponseCurve curve, OptionalDouble centreHz, int transformers) {
        List<String> lines = new ArrayList<>();
        double middle = centreHz.orElseGet(() ->
                curve.passband(3).map(Passband::centreHz).orElse(curve.highest().hz()));
        lines.add(curve.points().size() + " points, highest at "
                + Frequencies.kHz(curve.highest().hz()) + " kHz");
        lines.add(curve.passband(3)
                .map(band -> "centre " + Frequencies.kHz(band.centreHz()) + " kHz, the middle of the -3 dB points")
                .orElse("centre unknown: the curve does not fall by 3 dB on both sides; widen --span"));
        lines.add(widths(curve));
        lines.add(skirts(curve, middle));
        int humps = curve.humps(DIP_DB);
        lines.add(humps == 1 ? "one hump" : humps + " humps: over-coupled, or circuits tuned apart");
        lines.addAll(model(curve, transformers));
        return lines;
    }

    private static String widths(ResponseCurve curve) {
        Table table = new Table("down", "from kHz", "to kHz", "width kHz");
        for (double down : DOWN_DB) {
            String label = String.format(Locale.ROOT, "-%.0f dB", down);
            curve.passband(down)
                    .ifPresentOrElse(
                            band -> table.row(
                                    label,
                                    Frequencies.kHz(band.lowHz()),
                                    Frequencies.kHz(band.highHz()),
                                    Frequencies.kHz(band.widthHz())),
                            () -> table.row(label, "-", "-", "beyond the span"));
        }
        return table.text();
    }

    private static String skirts(ResponseCurve curve, double middle) {
        String where = "skirts 5 kHz to either side of " + Frequencies.kHz(middle) + " kHz: ";
        OptionalDouble difference = curve.skirtDifferenceDb(middle, SKIRT_HZ);
        if (difference.isEmpty()) {
            return where + "not measured; widen --span";
        }
        double dB = difference.getAsDouble();
        String verdict = Math.abs(dB) <= EVEN_SKIRTS_DB
                ? "even within 1 dB"
                : dB > 0 ? "uneven, the circuits are tuned too high" : "uneven, the circuits are tuned too low";
        return String.format(
                Locale.ROOT,
                "%slower %.1f dB, upper %.1f dB: %s",
                where,
                Rounded.to(curve.dbAt(middle - SKIRT_HZ).orElseThrow(), 1),
                Rounded.to(curve.dbAt(middle + SKIRT_HZ).orElseThrow(), 1),
                verdict);
    }

    private static List<String> model(ResponseCurve curve, int transformers) {
        String name = transformers == 1 ? "one coupled pair" : transformers + " equal coupled pairs";
        try {
            CoupledFit fit = CoupledFit.of(curve, transformers);
            List<String> lines = new ArrayList<>();
            lines.add(String.format(
                    Locale.ROOT,
                    "model of %s: centre %s +- %s kHz, Q %.1f +- %.1f, coupling %.2f +- %.2f of critical"
                            + " (one sigma; the points scatter by %.1f %% of the highest)",
                    name,
                    Frequencies.kHz(fit.centreHz()),
                    Frequencies.kHz(fit.centreSigmaHz()),
                    fit.q(),
                    fit.qSigma(),
                    fit.kappa(),
                    fit.kappaSigma(),
                    100 * fit.scatter()));
            if (fit.scatter() > POOR_FIT) {
                lines.add("the model does not describe this curve well: the circuits are tuned apart, or"
                        + " --transformers is another number");
            } else if (fit.isOverCoupled()) {
                lines.add("OVER-COUPLED: peaking its slugs in turn ends on one hump; compare the skirts, or with "
                        + SafeHands.safe() + " damp the partner winding");
            }
            return lines;
        } catch (Refused undetermined) {
            return List.of("no model of " + name + ": " + undetermined.reason());
        }
    }

    /**
     * Two curves beside each other.
     *
     * @param before measured first
     * @param now measured last
     * @return a table
     */
    public static String compare(ResponseCurve before, ResponseCurve now) {
        Table table = new Table("", "before", "now", "");
        row(table, "centre", centre(before), centre(now), "kHz");
        for (double down : DOWN_DB) {
            row(table, String.format(Locale.ROOT, "-%.0f dB", down), width(before, down), width(now, down), "kHz wide");
        }
        row(table, "humps", "" + before.humps(DIP_DB), "" + now.humps(DIP_DB), "");
        row(
                table,
                "highest",
                level(before.highest().level()),
                level(now.highest().level()),
                String.format(
                        Locale.ROOT,
                        "%+.1f dB at the same generator level",
                        Rounded.to(
                                Decibels.of(
                                        now.highest().level() / before.highest().level()),
                                1)));
        return table.text();
    }

    private static void row(Table table, String label, String before, String now, String after) {
        table.row(label, before, now, after);
    }

    private static String centre(ResponseCurve curve) {
        return curve.passband(3).map(band -> Frequencies.kHz(band.centreHz())).orElse("unknown");
    }

    private static String width(ResponseCurve curve, double down) {
        return curve.passband(down).map(band -> Frequencies.kHz(band.widthHz())).orElse("beyond");
    }

    private static String level(double level) {
        return String.format(Locale.ROOT, "%.4g", level);
    }
}
