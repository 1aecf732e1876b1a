package org.slugpeak.core.peak.bench;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Normal noise of known covariance: white, and on it something of a known spectrum in proportion to the reading. Readings and falls are
 * whitened by the Cholesky factor of the covariance, which predicts each reading from those before it, on the flank too (Van Trees,
 * Detection, Estimation, and Modulation Theory I, 1968, section 4.3: whitening; from memory). At times that need not be regular.
 */
final class Coloured implements Evidence {

    /** So many readings of the flank teach the noise. */
    private static final int FLANK = 400;
    /** So many readings after the top are looked at. */
    private static final int BEYOND = 400;
    /** The least pivot is the white noise, which is far more than this. */
    private static final double SMALLEST = 1e-12;

    private final int begin;
    private final double[][] factor;
    private final double[] whitened;

    private Coloured(int begin, double[][] factor, double[] offsets) {
        this.begin = begin;
        this.factor = factor;
        this.whitened = new double[offsets.length];
        for (int i = 0; i < offsets.length; i++) {
            whitened[i] = whiten(i, offsets[i], whitened, 0);
        }
    }

    /**
     * The law of the sum.
     *
     * @param sigma of the white part, as part of the top
     * @param covariance of the rest at a distance in seconds, as part of the reading
     */
    static Law of(double sigma, DoubleUnaryOperator covariance) {
        return (seconds, values, means) -> {
            int top = (int) DoubleStream.of(means).takeWhile(mean -> mean < 1).count();
            int begin = Math.max(0, top - FLANK);
            int end = Math.min(values.length, top + BEYOND);
            double[] offsets = new double[end - begin];
            RealMatrix matrix = new Array2DRowRealMatrix(offsets.length, offsets.length);
            for (int i = begin; i < end; i++) {
                offsets[i - begin] = values[i] / means[i] - 1;
                for (int j = begin; j <= i; j++) {
                    double both = covariance.applyAsDouble(seconds[i] - seconds[j]);
                    matrix.setEntry(i - begin, j - begin, both);
                    matrix.setEntry(j - begin, i - begin, both);
                }
                matrix.addToEntry(i - begin, i - begin, sigma * sigma / (means[i] * means[i]));
            }
            CholeskyDecomposition decomposed = new CholeskyDecomposition(matrix, SMALLEST, SMALLEST);
            return new Coloured(begin, decomposed.getL().getData(), offsets);
        };
    }

    /** Covariance of {@link Flicker}. */
    static DoubleUnaryOperator flicker(double sigma, double rate) {
        return distance -> {
            double sum = 0;
            for (int i = 0; i < Flicker.octaves(rate); i++) {
                sum += Math.exp(-distance * (1L << i) / Flicker.LONGEST_SECONDS);
            }
            return sigma * sigma * sum;
        };
    }

    /** Covariance of {@link Disturbance#tone}: its phase is learnt from the flank. */
    static DoubleUnaryOperator tone(double part, double hertz) {
        return distance -> part * part / 2 * Math.cos(2 * Math.PI * hertz * distance);
    }

    private double whiten(int place, double value, double[] before, int from) {
        double rest = value;
        for (int j = from; j < place; j++) {
            rest -= factor[place][j] * before[j];
        }
        return rest / factor[place][place];
    }

    @Override
    public double of(int reading, double[] fall, double[] white, int first) {
        int place = reading - begin;
        if (place >= factor.length) {
            return 0;
        }
        white[place] = whiten(place, fall[reading], white, first - begin);
        return white[place] * (whitened[place] - white[place] / 2);
    }
}
