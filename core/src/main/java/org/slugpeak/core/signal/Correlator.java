package org.slugpeak.core.signal;

/**
 * Synchronous detection over one window: compares samples with a cosine and a sine of a given frequency. The phase refers to
 * the centre of the window.
 *
 * <p>The window is symmetrical, so samples at equal distance from the centre are first added and subtracted, which halves
 * the work. The moment of the correlation gives the frequency error: the maximum of the windowed periodogram lies where it
 * is in phase with the correlation itself, and for a single sinusoid that maximum is the least-squares frequency (D. C. Rife
 * and R. R. Boorstyn, Single-Tone Parameter Estimation from Discrete-Time Observations, IEEE Trans. IT-20, 1974).
 */
final class Correlator {

    private final Taper taper;
    private double real;
    private double imaginary;
    private double momentReal;
    private double momentImaginary;

    Correlator(Taper taper) {
        this.taper = taper;
    }

    int length() {
        return taper.length();
    }

    Taper taper() {
        return taper;
    }

    /** Correlates {@code length()} samples from {@code from} on with the frequency {@code omega}, radians a sample. */
    void run(double[] data, int from, double omega) {
        int n = taper.length();
        int half = n / 2;
        int right = from + n - half;
        boolean odd = (n & 1) == 1;
        real = odd ? taper.weights()[half] * data[from + half] : 0;
        imaginary = 0;
        momentReal = 0;
        momentImaginary = 0;
        // Two oscillators, each for every second pair: neither has to wait for the other.
        double start = odd ? 1 : 0.5;
        accumulate(data, from + half - 1, right, half, omega, start);
    }

    private void accumulate(double[] data, int left, int right, int pairs, double omega, double start) {
        double[] w = taper.weights();
        int weightAt = w.length - pairs;
        double turnCos = Math.cos(2 * omega);
        double turnSin = Math.sin(2 * omega);
        double c = Math.cos(omega * start);
        double s = Math.sin(omega * start);
        double c2 = Math.cos(omega * (start + 1));
        double s2 = Math.sin(omega * (start + 1));
        double re = 0;
        double im = 0;
        double re1 = 0;
        double im1 = 0;
        double m = start;
        int i = 0;
        for (; i + 1 < pairs; i += 2) {
            double even = w[weightAt + i] * (data[right + i] + data[left - i]);
            double skew = w[weightAt + i] * (data[right + i] - data[left - i]);
            double even2 = w[weightAt + i + 1] * (data[right + i + 1] + data[left - i - 1]);
            double skew2 = w[weightAt + i + 1] * (data[right + i + 1] - data[left - i - 1]);
            re += even * c + even2 * c2;
            im -= skew * s + skew2 * s2;
            re1 += m * skew * c + (m + 1) * skew2 * c2;
            im1 -= m * even * s + (m + 1) * even2 * s2;
            double turned = c * turnCos - s * turnSin;
            s = s * turnCos + c * turnSin;
            c = turned;
            double turned2 = c2 * turnCos - s2 * turnSin;
            s2 = s2 * turnCos + c2 * turnSin;
            c2 = turned2;
            m += 2;
        }
        if (i < pairs) {
            double even = w[weightAt + i] * (data[right + i] + data[left - i]);
            double skew = w[weightAt + i] * (data[right + i] - data[left - i]);
            re += even * c;
            im -= skew * s;
            re1 += m * skew * c;
            im1 -= m * even * s;
        }
        real += re;
        imaginary += im;
        momentReal += re1;
        momentImaginary += im1;
    }

    /** Peak amplitude of the sinusoid. */
    double amplitude() {
        return 2 * Math.hypot(real, imaginary) / taper.sum();
    }

    /** Squared magnitude of the plain windowed sum, to be set against noise of the same window. */
    double power() {
        return real * real + imaginary * imaginary;
    }

    /** Real part of the complex amplitude at the centre of the window. */
    double cosine() {
        return 2 * real / taper.sum();
    }

    /** Imaginary part of the complex amplitude at the centre of the window. */
    double sine() {
        return 2 * imaginary / taper.sum();
    }

    /** How far the sinusoid lies above the frequency that was asked for, radians a sample; good to half a bin. */
    double offset() {
        double power = power();
        if (power == 0) {
            return 0;
        }
        double slope = (momentImaginary * real - momentReal * imaginary) / power;
        return slope * taper.sum() / taper.secondMoment();
    }

    /** Follows the sinusoid from a frequency at most half a bin away; leaves the correlation at the frequency returned. */
    double follow(double[] data, int from, double omega, int steps) {
        double limit = Math.PI / taper.length();
        double found = omega;
        for (int i = 0; i < steps; i++) {
            run(data, from, found);
            double offset = Math.max(-limit, Math.min(limit, offset()));
            found += offset;
        }
        run(data, from, found);
        return found;
    }
}
