package org.slugpeak.cli.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.slugpeak.cli.arithmetic.Table;
import org.slugpeak.cli.quantity.Uncertain;
import org.slugpeak.cli.words.CurvePhrase;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.curve.SignedCurve;
import org.slugpeak.core.word.Refused;

/** The curve of a discriminator or ratio detector in words. All methods are pure. */
public final class SignedCurveText {

    private SignedCurveText() {}

    /**
     * Everything that is known of a curve.
     *
     * @param points how many it was measured with
     * @param curve as measured
     * @param centreHz where its zero should be, Hz; empty where nobody said
     * @param swingHz over which it should be straight, Hz; empty for half the way to the nearer peak
     * @return lines
     * @throws Refused where the points do not determine it
     */
    public static List<String> describe(int points, SignedCurve curve, OptionalDouble centreHz, OptionalDouble swingHz)
            throws Refused {
        List<String> lines = new ArrayList<>();
        lines.add(CurvePhrase.ZERO.of(points, text(curve.zeroHz(), 1e-3)));
        centreHz.ifPresent(centre -> lines.add(CurvePhrase.OFF_CENTRE.of(text(
                new Estimate(curve.zeroHz().value() - centre, curve.zeroHz().sigma()), 1e-3))));
        lines.add(CurvePhrase.SLOPE.of(text(curve.slopePerHz(), 1e3)));
        SignedCurve.Peak lower = curve.lowerPeak();
        SignedCurve.Peak upper = curve.upperPeak();
        lines.add(peak(CurvePhrase.LOWER_PEAK, lower));
        lines.add(peak(CurvePhrase.UPPER_PEAK, upper));
        if (!lower.isAtTheEdge() && !upper.isAtTheEdge()) {
            lines.add(CurvePhrase.PEAKS_UNEQUAL.of(text(curve.peakAsymmetry(), 100)));
        }
        lines.add(swing(curve, swingHz.orElse(curve.reachHz() / 2)));
        return lines;
    }

    private static String text(Estimate estimate, double factor) {
        return Uncertain.text(estimate.value() * factor, estimate.sigma() * Math.abs(factor));
    }

    private static String peak(CurvePhrase phrase, SignedCurve.Peak peak) {
        return peak.isAtTheEdge()
                ? CurvePhrase.PEAK_BEYOND.of(Frequencies.kHz(peak.hz().value()))
                : phrase.of(text(peak.level(), 1), text(peak.hz(), 1e-3));
    }

    private static String swing(SignedCurve curve, double hz) {
        try {
            SignedCurve.Swing swing = curve.swing(hz);
            return CurvePhrase.SWING.of(Frequencies.kHz(hz), text(swing.asymmetry(), 100), text(swing.bend(), 100));
        } catch (Refused beyond) {
            return CurvePhrase.NO_SWING.of(Frequencies.kHz(hz), beyond.reason());
        }
    }

    /**
     * Two curves beside each other.
     *
     * @param before measured first
     * @param now measured last
     * @return a table
     * @throws Refused where the points do not determine them
     */
    public static String compare(SignedCurve before, SignedCurve now) throws Refused {
        Table table = new Table("", CurvePhrase.BEFORE.of(), CurvePhrase.NOW.of(), "");
        table.row(CurvePhrase.ZERO_ROW.of(), text(before.zeroHz(), 1e-3), text(now.zeroHz(), 1e-3), "kHz");
        table.row(CurvePhrase.SLOPE_ROW.of(), text(before.slopePerHz(), 1e3), text(now.slopePerHz(), 1e3), "");
        table.row(
                CurvePhrase.LOWER_ROW.of(),
                text(before.lowerPeak().level(), 1),
                text(now.lowerPeak().level(), 1),
                "");
        table.row(
                CurvePhrase.UPPER_ROW.of(),
                text(before.upperPeak().level(), 1),
                text(now.upperPeak().level(), 1),
                "");
        return table.text();
    }
}
