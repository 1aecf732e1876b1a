package org.slugpeak.core.signal;

/**
 * Lowers the sample rate by a whole factor with a linear-phase low-pass filter: Kaiser window, 75 dB, so the pass band is
 * flat within 0.002 dB and no correction is needed (J. F. Kaiser, Nonrecursive Digital Filter Design Using the I0-sinh
 * Window Function, Proc. IEEE ISCAS 1974).
 */
final class Decimator {

    private static final double STOP_DB = 75;

    private final int factor;
    private final double[] taps;
    private final History recent;
    private int waiting;
    private double output;

    /**
     * @param factor 1 or more; 1 passes samples on untouched
     * @param passFraction edge of the pass band as a fraction of the new sample rate, below one half
     */
    Decimator(int factor, double passFraction) {
        this.factor = factor;
        this.taps = factor == 1 ? new double[] {1} : lowPass(factor, passFraction);
        this.recent = new History(taps.length);
        for (int i = 0; i < taps.length; i++) {
            recent.append(0);
        }
    }

    /** Takes one sample; true when {@link #output()} has a new one. */
    boolean take(double sample) {
        recent.append(sample);
        if (++waiting < factor) {
            return false;
        }
        waiting = 0;
        output = filtered();
        return true;
    }

    double output() {
        return output;
    }

    /** Length of the filter in samples of the faster stream: how long a step stays in it. */
    int span() {
        return taps.length - 1;
    }

    private double filtered() {
        double[] x = recent.data();
        int from = recent.from(taps.length);
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (; i + 3 < taps.length; i += 4) {
            a += taps[i] * x[from + i];
            b += taps[i + 1] * x[from + i + 1];
            c += taps[i + 2] * x[from + i + 2];
            d += taps[i + 3] * x[from + i + 3];
        }
        for (; i < taps.length; i++) {
            a += taps[i] * x[from + i];
        }
        return (a + b) + (c + d);
    }

    private static double[] lowPass(int factor, double passFraction) {
        double transition = 2 * Math.PI * (1 - 2 * passFraction) / factor;
        int length = (int) Math.ceil((STOP_DB - 7.95) / (2.285 * transition)) + 1;
        double beta = 0.1102 * (STOP_DB - 8.7);
        double[] taps = new double[length];
        double sum = 0;
        for (int i = 0; i < length; i++) {
            double t = i - (length - 1) / 2.0;
            double edge = 2 * t / (length - 1);
            taps[i] = sinc(t / factor) * besselI0(beta * Math.sqrt(Math.max(0, 1 - edge * edge)));
            sum += taps[i];
        }
        for (int i = 0; i < length; i++) {
            taps[i] /= sum;
        }
        return taps;
    }

    private static double sinc(double x) {
        return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    }

    private static double besselI0(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-17 * sum; k++) {
            term *= (x / (2 * k)) * (x / (2 * k));
            sum += term;
        }
        return sum;
    }
}
