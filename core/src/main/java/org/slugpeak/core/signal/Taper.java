package org.slugpeak.core.signal;

/**
 * A symmetrical window as a cosine sum (F. J. Harris, On the Use of Windows for Harmonic Analysis, Proc. IEEE 66, 1978),
 * sampled at mid-points, so that it has no zero at its ends.
 */
final class Taper {

    private static final double[] HANN = {0.5, 0.5};
    private static final double[] BLACKMAN_HARRIS = {0.35875, 0.48829, 0.14128, 0.01168};

    private final double[] weights;
    private final double sum;
    private final double sumOfSquares;
    private final double secondMoment;

    private Taper(double[] weights) {
        this.weights = weights;
        double plain = 0;
        double squared = 0;
        double moment = 0;
        double centre = (weights.length - 1) / 2.0;
        for (int i = 0; i < weights.length; i++) {
            double w = weights[i];
            plain += w;
            squared += w * w;
            moment += w * (i - centre) * (i - centre);
        }
        this.sum = plain;
        this.sumOfSquares = squared;
        this.secondMoment = moment;
    }

    /** Noise bandwidth 1.5 bins; side lobes fall by 18 dB an octave: the level window. */
    static Taper hann(int length) {
        return cosineSum(length, HANN);
    }

    /** Four terms, noise bandwidth 2.0 bins, all side lobes below -92 dB from 4 bins on: for weak next to strong. */
    static Taper blackmanHarris(int length) {
        return cosineSum(length, BLACKMAN_HARRIS);
    }

    /**
     * Half a sine: the window for frequency. Its estimate spreads 1.22 times the Cramer-Rao bound where Hann's spreads 1.53
     * times: sqrt(S(w^2 t^2) / S(w t^2)^2 * S(t^2)).
     */
    static Taper sine(int length) {
        double[] weights = new double[length];
        for (int i = 0; i < length; i++) {
            weights[i] = Math.sin(Math.PI * (i + 0.5) / length);
        }
        return new Taper(weights);
    }

    private static Taper cosineSum(int length, double[] coefficients) {
        double[] weights = new double[length];
        for (int i = 0; i < length; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / length;
            double sign = 1;
            for (int k = 0; k < coefficients.length; k++) {
                weights[i] += sign * coefficients[k] * Math.cos(k * angle);
                sign = -sign;
            }
        }
        return new Taper(weights);
    }

    int length() {
        return weights.length;
    }

    double[] weights() {
        return weights;
    }

    double sum() {
        return sum;
    }

    double sumOfSquares() {
        return sumOfSquares;
    }

    /** Sum of w m^2, m counted from the centre. */
    double secondMoment() {
        return secondMoment;
    }

    /** Equivalent noise bandwidth in bins of 1 / length. */
    double noiseBandwidthBins() {
        return weights.length * sumOfSquares / (sum * sum);
    }
}
