package org.slugpeak.cli.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.slugpeak.cli.arithmetic.Table;
import org.slugpeak.cli.quantity.Uncertain;
import org.slugpeak.cli.words.CurvePhrase;
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
    /** Common practice, no source. */
    private static final double EVEN_SKIRTS_DB = 1;

    /** A dip counts where it is deeper than three times the usual scatter of a reading. */
    private static final double DIP_DB = 0.3;

    /** Windings of which one is damped by a diode differ by as much at the most; common practice, no source. */
    private static final double UNEQUAL_QS = 3;

    /** Points that scatter by more of the highest level are not those of equal tanks on one frequency. */
    private static final double POOR_FIT = 0.03;

    private CurveText() {}

    /**
     * Everything that is known of a curve.
     *
     * @param curve as measured
     * @param centreHz where it should be centred, Hz; empty to take the middle of the -3 dB points
     * @param skirtsHz how far from there the skirts are compared, Hz; empty for half the width 6 dB down
     * @param transformers how many the signal passes, for the model
     * @return lines
     */
    public static List<String> describe(
            ResponseCurve curve, OptionalDouble centreHz, OptionalDouble skirtsHz, int transformers) {
        List<String> lines = new ArrayList<>();
        double middle = centreHz.orElseGet(() ->
                curve.passband(3).map(Passband::centreHz).orElse(curve.highest().hz()));
        lines.add(CurvePhrase.HIGHEST.of(
                curve.points().size(), Frequencies.kHz(curve.highest().hz())));
        lines.add(curve.passband(3)
                .map(band -> CurvePhrase.CENTRE.of(Frequencies.kHz(band.centreHz())))
                .orElseGet(CurvePhrase.NO_CENTRE::of));
        lines.add(widths(curve));
        lines.add(skirts(curve, middle, skirtsHz.isPresent() ? skirtsHz : halfWidth(curve)));
        int humps = curve.humps(DIP_DB);
        lines.add(humps == 1 ? CurvePhrase.ONE_HUMP.of() : CurvePhrase.HUMPS.of(humps));
        lines.addAll(model(curve, transformers));
        return lines;
    }

    private static String widths(ResponseCurve curve) {
        Table table =
                new Table(CurvePhrase.DOWN.of(), CurvePhrase.FROM.of(), CurvePhrase.TO.of(), CurvePhrase.WIDTH.of());
        for (double down : DOWN_DB) {
            String label = String.format(Locale.ROOT, "-%.0f dB", down);
            curve.passband(down)
                    .ifPresentOrElse(
                            band -> table.row(
                                    label,
                                    Frequencies.kHz(band.lowHz()),
                                    Frequencies.kHz(band.highHz()),
                                    Frequencies.kHz(band.widthHz())),
                            () -> table.row(label, "-", "-", CurvePhrase.BEYOND_SPAN.of()));
        }
        return table.text();
    }

    private static OptionalDouble halfWidth(ResponseCurve curve) {
        return curve.passband(6).stream()
                .mapToDouble(band -> band.widthHz() / 2)
                .findFirst();
    }

    private static String skirts(ResponseCurve curve, double middle, OptionalDouble away) {
        if (away.isEmpty()) {
            return CurvePhrase.NO_SKIRTS.of();
        }
        double hz = away.getAsDouble();
        OptionalDouble difference = curve.skirtDifferenceDb(middle, hz);
        String found = difference.isEmpty()
                ? CurvePhrase.SKIRTS_UNKNOWN.of()
                : CurvePhrase.SKIRTS_ARE.of(
                        Rounded.to(curve.dbAt(middle - hz).orElseThrow(), 1),
                        Rounded.to(curve.dbAt(middle + hz).orElseThrow(), 1),
                        verdict(difference.getAsDouble()));
        return CurvePhrase.SKIRTS.of(Frequencies.kHz(hz), Frequencies.kHz(middle), found);
    }

    private static String verdict(double differenceDb) {
        if (Math.abs(differenceDb) <= EVEN_SKIRTS_DB) {
            return CurvePhrase.EVEN.of();
        }
        return (differenceDb > 0 ? CurvePhrase.TOO_HIGH : CurvePhrase.TOO_LOW).of();
    }

    private static List<String> model(ResponseCurve curve, int transformers) {
        String name = transformers == 1 ? CurvePhrase.ONE_PAIR.of() : CurvePhrase.PAIRS.of(transformers);
        try {
            CoupledFit fit = CoupledFit.of(curve, transformers);
            List<String> lines = new ArrayList<>();
            lines.add(CurvePhrase.MODEL.of(
                    name,
                    Uncertain.text(fit.centreHz() / 1e3, fit.centreSigmaHz() / 1e3),
                    Uncertain.text(fit.q(), fit.qSigma()),
                    Uncertain.text(fit.kappa(), fit.kappaSigma()),
                    100 * fit.scatter()));
            lines.add(CurvePhrase.UNEQUAL.of(fit.kappaIfQsDifferBy(UNEQUAL_QS)));
            if (fit.scatter() > POOR_FIT) {
                lines.add(CurvePhrase.POOR_FIT.of());
            } else if (fit.isOverCoupled()) {
                lines.add(CurvePhrase.OVER_COUPLED.of(SafeHands.safe()));
            }
            if (fit.bend().toe() > 0) {
                lines.add(CurvePhrase.TOE.of());
            }
            if (fit.bend().limit() > 0) {
                lines.add(CurvePhrase.LIMITED.of());
            }
            return lines;
        } catch (Refused undetermined) {
            return List.of(CurvePhrase.NO_MODEL.of(name, undetermined.reason()));
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
        Table table = new Table("", CurvePhrase.BEFORE.of(), CurvePhrase.NOW.of(), "");
        row(table, CurvePhrase.CENTRE_ROW.of(), centre(before), centre(now), "kHz");
        for (double down : DOWN_DB) {
            row(
                    table,
                    String.format(Locale.ROOT, "-%.0f dB", down),
                    width(before, down),
                    width(now, down),
                    CurvePhrase.WIDE.of());
        }
        row(table, CurvePhrase.HUMPS_ROW.of(), "" + before.humps(DIP_DB), "" + now.humps(DIP_DB), "");
        row(
                table,
                CurvePhrase.HIGHEST_ROW.of(),
                level(before.highest().level()),
                level(now.highest().level()),
                CurvePhrase.SAME_GENERATOR.of(Rounded.to(
                        Decibels.of(now.highest().level() / before.highest().level()), 1)));
        return table.text();
    }

    private static void row(Table table, String label, String before, String now, String after) {
        table.row(label, before, now, after);
    }

    private static String centre(ResponseCurve curve) {
        return curve.passband(3).map(band -> Frequencies.kHz(band.centreHz())).orElseGet(CurvePhrase.UNKNOWN::of);
    }

    private static String width(ResponseCurve curve, double down) {
        return curve.passband(down).map(band -> Frequencies.kHz(band.widthHz())).orElseGet(CurvePhrase.BEYOND::of);
    }

    private static String level(double level) {
        return String.format(Locale.ROOT, "%.4g", level);
    }
}
