package org.slugpeak.core.scale;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight line through all known points by least squares, as a check on the whole dial: what a slipped pointer or a
 * common scale error leaves. Source: GUM, JCGM 100:2008, annex H.3. Immutable; any thread may use it.
 *
 * @param offset value at 0, in the unit of the ordinates
 * @param offsetSigma standard uncertainty of the offset, in the same unit
 * @param slope value per unit of the abscissa
 * @param slopeSigma standard uncertainty of the slope, in the same unit
 * @param scatter standard deviation of the points about the line, in the unit of the ordinates
 * @param meanX mean of the abscissas, in their unit
 * @param sumSquaresX sum of squares of the abscissas about their mean, in the square of their unit
 * @param points how many points, 3 or more
 */
public record CalibrationLine(
        double offset,
        double offsetSigma,
        double slope,
        double slopeSigma,
        double scatter,
        double meanX,
        double sumSquaresX,
        int points) {

    /**
     * Fits the line.
     *
     * @param x abscissas, in one unit
     * @param y ordinates in one unit, as many
     * @return the line
     * @throws IllegalArgumentException for fewer than three points
     */
    public static CalibrationLine fit(double[] x, double[] y) {
        if (x.length < 3 || x.length != y.length) {
            throw new IllegalArgumentException("a line with an uncertainty needs three points or more");
        }
        SimpleRegression fit = new SimpleRegression();
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            fit.addData(x[i], y[i]);
            sum += x[i];
        }
        return new CalibrationLine(
                fit.getIntercept(),
                fit.getInterceptStdErr(),
                fit.getSlope(),
                fit.getSlopeStdErr(),
                Math.sqrt(fit.getMeanSquareError()),
                sum / x.length,
                fit.getXSumSquares(),
                x.length);
    }

    /**
     * Fits the line of dial correction (true minus dial) against dial.
     *
     * @param points three or more
     * @return the line, in Hz against Hz
     */
    public static CalibrationLine ofCorrections(List<KnownPoint> points) {
        return fit(
                points.stream().mapToDouble(KnownPoint::dialHz).toArray(),
                points.stream().mapToDouble(each -> -each.dialErrorHz()).toArray());
    }

    /**
     * The line's value.
     *
     * @param x abscissa, in the unit of the abscissas
     * @return ordinate
     */
    public double at(double x) {
        return offset + slope * x;
    }

    /**
     * Standard uncertainty of the line's value.
     *
     * @param x abscissa, in the unit of the abscissas
     * @return in the unit of the ordinate
     */
    public double sigmaAt(double x) {
        return scatter * Math.sqrt(1.0 / points + (x - meanX) * (x - meanX) / sumSquaresX);
    }
}
