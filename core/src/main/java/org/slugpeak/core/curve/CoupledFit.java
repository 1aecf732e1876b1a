package org.slugpeak.core.curve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.slugpeak.core.word.Refused;

/**
 * The coupled circuits that fit a response curve: one or more equal transformers in cascade, each of two equal tanks. The
 * magnitude of one is {@code (f0/f) 2 kappa / |(1 + jx)^2 + (kappa f/f0)^2|} with {@code x = Q(f/f0 - f0/f)} and
 * {@code kappa = k Q}: the exact mesh solution of two inductively coupled tanks with loss in series with the coils, relative
 * to critical coupling at the centre. Near resonance it is the form of Terman, Radio Engineers' Handbook, 1943, section 3.
 * Immutable; any thread may use it.
 *
 * @param transformers how many in cascade
 * @param centreHz resonance of all tanks, Hz
 * @param centreSigmaHz its standard uncertainty
 * @param q quality factor of each tank
 * @param qSigma standard uncertainty of that factor
 * @param kappa coupling in units of the critical one
 * @param kappaSigma standard uncertainty of that, without unit
 * @param scatter of the points about the fit, as a fraction of the highest level
 * @param scale highest level in terms of the model, in the unit of the readings
 */
public record CoupledFit(
        int transformers,
        double centreHz,
        double centreSigmaHz,
        double q,
        double qSigma,
        double kappa,
        double kappaSigma,
        double scatter,
        double scale) {

    private static final double[] FIRST_KAPPAS = {0.4, 1, 1.6, 2.5};

    /** Known worse than by a factor of e: not known. */
    private static final double VAGUE = 1;

    private static final int SCALE = 0;
    private static final int CENTRE = 1;
    private static final int LOG_Q = 2;
    private static final int LOG_KAPPA = 3;

    /**
     * Fits a curve.
     *
     * @param curve five points or more that reach beyond the passband
     * @param transformers how many equal transformers the signal passes, 1 or more
     * @return the best fit
     * @throws Refused where the points do not determine the circuits
     */
    public static CoupledFit of(ResponseCurve curve, int transformers) throws Refused {
        List<ResponsePoint> points = curve.points();
        double top = curve.highest().level();
        double first = startHz(curve);
        double[] x = points.stream().mapToDouble(point -> point.hz() / first).toArray();
        double[] y = points.stream().mapToDouble(point -> point.level() / top).toArray();
        double width = width(curve);
        List<LeastSquaresFit> fits = new ArrayList<>();
        for (double kappa : FIRST_KAPPAS) {
            fits.add(attempt(x, y, transformers, first / width, kappa));
        }
        LeastSquaresFit best = Collections.min(fits, Comparator.comparingDouble(LeastSquaresFit::residualSumOfSquares));
        if (!(best.sigma(LOG_Q) < VAGUE && best.sigma(LOG_KAPPA) < VAGUE)) {
            throw new Refused(
                    "the points do not determine Q and coupling: measure further out on both sides, and more points");
        }
        double q = Math.exp(best.parameter(LOG_Q));
        double kappa = Math.exp(best.parameter(LOG_KAPPA));
        return new CoupledFit(
                transformers,
                first * best.parameter(CENTRE),
                first * best.sigma(CENTRE),
                q,
                q * best.sigma(LOG_Q),
                kappa,
                kappa * best.sigma(LOG_KAPPA),
                best.residualSigma(),
                top * best.parameter(SCALE));
    }

    private static LeastSquaresFit attempt(double[] x, double[] y, int transformers, double sharpness, double kappa)
            throws Refused {
        double q = sharpness * (1 + kappa);
        double[] start = {1, 1, Math.log(q), Math.log(kappa)};
        return LeastSquaresFit.of((f, p) -> model(f, p, transformers), x, y, start);
    }

    private static double startHz(ResponseCurve curve) {
        return curve.passband(3).map(Passband::centreHz).orElse(curve.highest().hz());
    }

    private static double width(ResponseCurve curve) {
        List<ResponsePoint> points = curve.points();
        double range = points.get(points.size() - 1).hz() - points.get(0).hz();
        return curve.passband(3)
                .map(Passband::widthHz)
                .filter(width -> width > 0)
                .orElse(range / 2);
    }

    private static double model(double f, double[] p, int transformers) {
        double one = pair(f / p[CENTRE], Math.exp(p[LOG_Q]), Math.exp(p[LOG_KAPPA]));
        return p[SCALE] * Math.pow(one, transformers);
    }

    private static double pair(double ratio, double q, double kappa) {
        double x = q * (ratio - 1 / ratio);
        double coupled = kappa * ratio;
        return 2 * kappa / ratio / Math.hypot(1 - x * x + coupled * coupled, 2 * x);
    }

    /**
     * The fitted level.
     *
     * @param hz frequency, Hz
     * @return in the unit of the readings
     */
    public double levelAt(double hz) {
        return scale * Math.pow(pair(hz / centreHz, q, kappa), transformers);
    }

    /**
     * Whether the circuits are coupled more than critically, beyond doubt: then peaking a slug for the greatest output
     * misleads.
     *
     * @return true where the coupling is above 1 by more than two standard uncertainties
     */
    public boolean isOverCoupled() {
        return kappa - 2 * kappaSigma > 1;
    }
}
