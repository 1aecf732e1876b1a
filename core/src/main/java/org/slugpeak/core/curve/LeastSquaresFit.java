package org.slugpeak.core.curve;

import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.slugpeak.core.word.Refused;

/**
 * A curve of known form fitted to points by least squares. Optimizer: Levenberg and Marquardt, Commons Math 3.6.1; derivatives
 * by central differences; uncertainties from the covariance at the solution times the residual variance. Checked against the
 * certified results of the NIST Statistical Reference Datasets. Immutable; any thread may use it.
 */
public final class LeastSquaresFit {

    /** Cube root of the machine's epsilon balances truncation against rounding in a central difference. */
    private static final double STEP = Math.cbrt(Math.ulp(1.0));

    private static final double MOST_CORRELATED = 0.95;

    private static final int MOST_EVALUATIONS = 20_000;
    private static final double SINGULAR = 1e-16;

    private final RealVector parameters;
    private final RealVector sigmas;
    private final double residualSumOfSquares;
    private final double residualSigma;
    private final int freedom;
    private final double[] residuals;

    /** The form of a curve. */
    @FunctionalInterface
    public interface Form {
        /**
         * The curve's value.
         *
         * @param x abscissa, in the unit of its axis
         * @param parameters in the units of the curve; not to be changed
         * @return ordinate
         */
        double at(double x, double[] parameters);
    }

    private LeastSquaresFit(LeastSquaresOptimizer.Optimum optimum, int observations) {
        this.parameters = optimum.getPoint();
        this.residualSumOfSquares = optimum.getResiduals().dotProduct(optimum.getResiduals());
        this.residuals = optimum.getResiduals().toArray();
        this.freedom = observations - parameters.getDimension();
        this.residualSigma = Math.sqrt(residualSumOfSquares / freedom);
        this.sigmas = optimum.getSigma(SINGULAR).mapMultiply(residualSigma);
    }

    /**
     * Fits.
     *
     * @param form of the curve
     * @param x abscissas in the unit of their axis, more of them than parameters
     * @param y ordinates in the unit of their axis, as many
     * @param start where to begin, in the units of the parameters
     * @return the fit
     * @throws Refused where the points do not determine the curve
     */
    public static LeastSquaresFit of(Form form, double[] x, double[] y, double[] start) throws Refused {
        if (x.length <= start.length) {
            throw new Refused("the fit needs more than " + start.length + " points");
        }
        try {
            return new LeastSquaresFit(
                    new LevenbergMarquardtOptimizer()
                            .withCostRelativeTolerance(1e-14)
                            .withParameterRelativeTolerance(1e-12)
                            .optimize(new LeastSquaresBuilder()
                                    .start(start)
                                    .target(y)
                                    .model(point -> values(form, x, point.toArray()))
                                    .maxEvaluations(MOST_EVALUATIONS)
                                    .maxIterations(MOST_EVALUATIONS)
                                    .build()),
                    x.length);
        } catch (MathIllegalStateException | org.apache.commons.math3.linear.SingularMatrixException e) {
            throw new Refused("the points do not determine the curve: take more of them", e);
        }
    }

    private static Pair<RealVector, RealMatrix> values(Form form, double[] x, double[] point) {
        double[] values = new double[x.length];
        double[][] slopes = new double[x.length][point.length];
        for (int i = 0; i < x.length; i++) {
            values[i] = form.at(x[i], point);
            for (int j = 0; j < point.length; j++) {
                slopes[i][j] = slope(form, x[i], point, j);
            }
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    private static double slope(Form form, double x, double[] point, int which) {
        double step = STEP * Math.max(Math.abs(point[which]), 1e-6);
        double[] moved = point.clone();
        moved[which] = point[which] + step;
        double above = form.at(x, moved);
        moved[which] = point[which] - step;
        return (above - form.at(x, moved)) / (2 * step);
    }

    /**
     * A fitted parameter.
     *
     * @param index as in the start
     * @return its value, in its own unit
     */
    public double parameter(int index) {
        return parameters.getEntry(index);
    }

    /**
     * How well a parameter is known.
     *
     * @param index as in the start
     * @return one standard deviation, in the unit of the parameter
     */
    public double sigma(int index) {
        return sigmas.getEntry(index);
    }

    /**
     * What the curve leaves unexplained.
     *
     * @return sum of the squares of the residuals, in the square of the unit of the ordinates
     */
    public double residualSumOfSquares() {
        return residualSumOfSquares;
    }

    /**
     * Scatter of the points about the curve.
     *
     * @return one standard deviation, in the unit of the ordinates
     */
    public double residualSigma() {
        return residualSigma;
    }

    /**
     * How many points there are more than parameters.
     *
     * @return 1 or more
     */
    public int freedom() {
        return freedom;
    }

    /**
     * By how much residuals that follow each other make the standard deviations larger than independent ones do: those of a form
     * that is not the curve's run in long bows. {@code sqrt((1 + r)/(1 - r))} with r their correlation from point to point (the
     * variance of a mean of a first-order autoregressive series, any book on time series).
     *
     * @return factor, 1 or more
     */
    public double bowing() {
        double same = 0;
        double next = 0;
        for (int i = 1; i < residuals.length; i++) {
            next += residuals[i] * residuals[i - 1];
            same += residuals[i] * residuals[i];
        }
        double correlation = same > 0 ? Math.min(MOST_CORRELATED, Math.max(0, next / same)) : 0;
        return Math.sqrt((1 + correlation) / (1 - correlation));
    }
}
