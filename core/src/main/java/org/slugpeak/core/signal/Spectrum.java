package org.slugpeak.core.signal;

import java.util.Arrays;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.apache.commons.math3.util.KthSelector;

/** The power spectrum of one Hann window of the tone band, its strongest place and its noise floor. */
final class Spectrum {

    private static final double FLOOR_LOW_HZ = 250;
    private static final double FLOOR_HIGH_HZ = 1150;

    private final Taper taper;
    private final double rateHz;
    private final double[][] data;
    private final double[] power;
    private final double[] sorted;
    private final int floorFrom;
    private final KthSelector selector = new KthSelector();
    private double floor;

    Spectrum(Taper taper, double rateHz) {
        this.taper = taper;
        this.rateHz = rateHz;
        int size = Integer.highestOneBit(2 * taper.length());
        this.data = new double[2][size];
        this.power = new double[size / 2];
        this.floorFrom = bin(FLOOR_LOW_HZ);
        this.sorted = new double[bin(FLOOR_HIGH_HZ) - floorFrom + 1];
    }

    /** Transforms {@code taper.length()} samples from {@code from} on. */
    void run(double[] samples, int from) {
        double[] w = taper.weights();
        double[] re = data[0];
        Arrays.fill(data[1], 0);
        Arrays.fill(re, w.length, re.length, 0);
        for (int i = 0; i < w.length; i++) {
            re[i] = w[i] * samples[from + i];
        }
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int i = 0; i < power.length; i++) {
            power[i] = data[0][i] * data[0][i] + data[1][i] * data[1][i];
        }
        System.arraycopy(power, floorFrom, sorted, 0, sorted.length);
        double median = selector.select(sorted, null, sorted.length / 2);
        // The power of noise in a bin is exponentially distributed: its median is ln 2 of its mean. A tone fills too
        // few
        // bins to move the median.
        floor = median / Math.log(2);
    }

    /** Mean noise power of a bin. */
    double floor() {
        return floor;
    }

    /** Mean square of what lies between two frequencies (Parseval's theorem). */
    double meanSquare(double lowHz, double highHz) {
        double sum = 0;
        for (int i = bin(lowHz); i <= bin(highHz); i++) {
            sum += power[i];
        }
        return 2 * sum / (2.0 * power.length * taper.sumOfSquares());
    }

    /** Frequency of the strongest bin between two frequencies, refined by a parabola through the logarithms. */
    double strongestHz(double lowHz, double highHz) {
        int best = bin(lowHz);
        for (int i = best; i <= bin(highHz); i++) {
            if (power[i] > power[best]) {
                best = i;
            }
        }
        return (best + vertex(best)) * rateHz / (2.0 * power.length);
    }

    /** Power at the bin next to a frequency. */
    double powerAt(double hz) {
        return power[bin(hz)];
    }

    private double vertex(int i) {
        if (power[i - 1] <= 0 || power[i] <= 0 || power[i + 1] <= 0) {
            return 0;
        }
        double below = Math.log(power[i - 1]);
        double here = Math.log(power[i]);
        double above = Math.log(power[i + 1]);
        double bend = below - 2 * here + above;
        return bend >= 0 ? 0 : Math.max(-0.5, Math.min(0.5, 0.5 * (below - above) / bend));
    }

    private int bin(double hz) {
        int i = (int) Math.round(hz / rateHz * 2 * power.length);
        return Math.max(1, Math.min(power.length - 2, i));
    }
}
