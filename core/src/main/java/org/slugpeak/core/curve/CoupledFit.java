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
 *
 * <p>Three laws of the detector are tried: straight, with a toe, and with a top that is held down. One that is not straight is taken
 * where the points demand it; where they do not, by how much it would move Q and coupling is part of their uncertainty. So is that
 * residuals run in bows. Immutable; any thread may use it.
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
 * @param bend the law of the detector that the points demand
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
        double scale,
        Bend bend) {

    /**
     * A detector's law by one figure, made up for the fit. It is 0 for a straight one.
     *
     * @param toe t of {@code u^2/(u + t)} in terms of the strongest signal, without unit; 0 or more
     * @param limit c of {@code u/sqrt(1 + (c u)^2)}, without unit; 0 or more
     */
    public record Bend(double toe, double limit) {

        /** None. */
        public static final Bend STRAIGHT = new Bend(0, 0);

        /** Signals weaker than the strongest come out too weak, or those near it too strong; 1 for 1. */
        double of(double signal) {
            double bent = signal * signal * (1 + toe) / (signal + toe);
            return bent * Math.sqrt((1 + limit * limit) / (1 + limit * limit * bent * bent));
        }
    }

    /** The three laws that are tried; the figure is the fifth parameter. */
    private enum Law {
        STRAIGHT,
        TOE,
        LIMITED;

        Bend bend(double figure) {
            return switch (this) {
                case STRAIGHT -> Bend.STRAIGHT;
                case TOE -> new Bend(Math.abs(figure), 0);
                case LIMITED -> new Bend(0, Math.abs(figure));
            };
        }
    }

    private static final double[] FIRST_KAPPAS = {0.4, 1, 1.6, 2.5};

    /** Known worse than by a factor of e: not known. */
    private static final double VAGUE = 1;

    private static final int SCALE = 0;
    private static final int CENTRE = 1;
    private static final int LOG_Q = 2;
    private static final int LOG_KAPPA = 3;
    private static final int BEND = 4;

    private static final double MISLEADING_KAPPA = 1.05;

    private static final double[] FIRST_BENDS = {0.05, 0.4};

    /** One parameter more is demanded from 3.5 standard deviations on, squared. */
    private static final double DEMANDED = 12;

    /**
     * The bent laws are not those of a real detector: by so much they miss Q and coupling of a thermionic diode between 0.3 and 3 V,
     * computed.
     */
    private static final double FORM_DOUBT_LOG_Q = 0.04;

    private static final double FORM_DOUBT_LOG_KAPPA = 0.02;

    /** A fit as good as that has nothing left to explain. */
    private static final double EXACT = 1e-5;

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
        List<LeastSquaresFit> straight = new ArrayList<>();
        for (double kappa : FIRST_KAPPAS) {
            double[] start = {1, 1, Math.log(first / width * (1 + kappa)), Math.log(kappa)};
            straight.add(attempt(x, y, transformers, Law.STRAIGHT, start));
        }
        LeastSquaresFit best =
                Collections.min(straight, Comparator.comparingDouble(LeastSquaresFit::residualSumOfSquares));
        if (!(best.sigma(LOG_Q) < VAGUE && best.sigma(LOG_KAPPA) < VAGUE)) {
            throw new Refused(
                    "the points do not determine Q and coupling: measure further out on both sides, and more points");
        }
        return new Trial(x, y, transformers, best).chosen(first, top);
    }

    private static LeastSquaresFit attempt(double[] x, double[] y, int transformers, Law law, double[] start)
            throws Refused {
        return LeastSquaresFit.of((f, p) -> model(f, p, transformers, law), x, y, start);
    }

    /** Straight against bent laws. */
    private static final class Trial {

        private final double[] x;
        private final double[] y;
        private final int transformers;
        private LeastSquaresFit best;
        private Law law = Law.STRAIGHT;
        private double doubtLogQ;
        private double doubtLogKappa;

        Trial(double[] x, double[] y, int transformers, LeastSquaresFit straight) {
            this.x = x;
            this.y = y;
            this.transformers = transformers;
            this.best = straight;
        }

        CoupledFit chosen(double firstHz, double top) {
            LeastSquaresFit straight = best;
            for (Law bent : List.of(Law.TOE, Law.LIMITED)) {
                consider(bent, straight);
            }
            double q = Math.exp(best.parameter(LOG_Q));
            double kappa = Math.exp(best.parameter(LOG_KAPPA));
            double bowing = best.bowing();
            return new CoupledFit(
                    transformers,
                    firstHz * best.parameter(CENTRE),
                    firstHz * best.sigma(CENTRE) * bowing,
                    q,
                    q * Math.hypot(best.sigma(LOG_Q) * bowing, doubtLogQ),
                    kappa,
                    kappa * Math.hypot(best.sigma(LOG_KAPPA) * bowing, doubtLogKappa),
                    best.residualSigma(),
                    top * best.parameter(SCALE),
                    law == Law.STRAIGHT ? Bend.STRAIGHT : law.bend(best.parameter(BEND)));
        }

        private void consider(Law bent, LeastSquaresFit straight) {
            for (double figure : FIRST_BENDS) {
                double[] start = {
                    straight.parameter(SCALE),
                    straight.parameter(CENTRE),
                    straight.parameter(LOG_Q),
                    straight.parameter(LOG_KAPPA),
                    figure
                };
                try {
                    weigh(attempt(x, y, transformers, bent, start), bent, straight);
                } catch (Refused undetermined) {
                    // One figure more than the points can bear: the straight law stands.
                }
            }
        }

        private void weigh(LeastSquaresFit fit, Law bent, LeastSquaresFit straight) {
            double gain = (straight.residualSumOfSquares() - fit.residualSumOfSquares())
                    / (fit.residualSigma() * fit.residualSigma());
            if (straight.residualSigma() > EXACT && gain > DEMANDED) {
                if (fit.residualSumOfSquares() < best.residualSumOfSquares()) {
                    best = fit;
                    law = bent;
                    doubtLogQ = FORM_DOUBT_LOG_Q;
                    doubtLogKappa = FORM_DOUBT_LOG_KAPPA;
                }
            } else if (law == Law.STRAIGHT && fit.sigma(LOG_KAPPA) < VAGUE) {
                doubtLogQ = Math.max(doubtLogQ, Math.abs(fit.parameter(LOG_Q) - straight.parameter(LOG_Q)));
                doubtLogKappa =
                        Math.max(doubtLogKappa, Math.abs(fit.parameter(LOG_KAPPA) - straight.parameter(LOG_KAPPA)));
            }
        }
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

    private static double model(double f, double[] p, int transformers, Law law) {
        double one = pair(f / p[CENTRE], Math.exp(p[LOG_Q]), Math.exp(p[LOG_KAPPA]));
        Bend bend = law == Law.STRAIGHT ? Bend.STRAIGHT : law.bend(p[BEND]);
        return p[SCALE] * bend.of(Math.pow(one, transformers));
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
        return scale * bend.of(Math.pow(pair(hz / centreHz, q, kappa), transformers));
    }

    /**
     * Whether the circuits are coupled more than critically, beyond doubt: then peaking a slug for the greatest output
     * misleads.
     *
     * @return true where the coupling is above 1.05 by more than two standard uncertainties; below that the dip of a pair is less than
     *     a hundredth of a decibel
     */
    public boolean isOverCoupled() {
        return kappa - 2 * kappaSigma > MISLEADING_KAPPA;
    }

    /**
     * The same response from windings of unequal Q. A response alone cannot tell: only two figures of its shape are there, and Q1,
     * Q2 and coupling are three. With {@code r = (Q1 + Q2)/(2 sqrt(Q1 Q2))} the mean Q {@code sqrt(Q1 Q2)} is r times that of equal
     * windings and the coupling {@code sqrt(r^2 (1 + kappa^2) - 1)}, near resonance; derived here from the same form.
     *
     * @param ratio of the better Q to the worse; 1 or more
     * @return coupling in units of the critical one
     */
    public double kappaIfQsDifferBy(double ratio) {
        double r = (Math.sqrt(ratio) + 1 / Math.sqrt(ratio)) / 2;
        return Math.sqrt(r * r * (1 + kappa * kappa) - 1);
    }
}
