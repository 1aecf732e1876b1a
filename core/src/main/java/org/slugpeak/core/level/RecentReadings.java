package org.slugpeak.core.level;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.commons.math3.stat.StatUtils;

/** The readings of the last while. One thread at a time. */
final class RecentReadings {

    /** From the scatter of second differences of white noise (sqrt 6) and of a median absolute value (1.4826). */
    private static final double SIGMA_OF_DIFFERENCES = 1.4826 / Math.sqrt(6);

    private record Sample(long tNanos, double value) {}

    private final long spanNanos;
    private final Deque<Sample> samples = new ArrayDeque<>();

    RecentReadings(double spanSeconds) {
        this.spanNanos = (long) (spanSeconds * 1e9);
    }

    void add(long tNanos, double value) {
        samples.addLast(new Sample(tNanos, value));
        while (samples.size() > 5 && tNanos - samples.getFirst().tNanos() > spanNanos) {
            samples.removeFirst();
        }
    }

    void clear() {
        samples.clear();
    }

    int size() {
        return samples.size();
    }

    long spannedNanos() {
        return samples.isEmpty()
                ? 0
                : samples.getLast().tNanos() - samples.getFirst().tNanos();
    }

    double median() {
        return samples.isEmpty() ? Double.NaN : StatUtils.percentile(values(), 50);
    }

    double standardDeviation() {
        return samples.size() < 3 ? Double.NaN : Math.sqrt(StatUtils.variance(values()));
    }

    double last() {
        return samples.isEmpty() ? Double.NaN : samples.getLast().value();
    }

    /** Scatter from reading to reading, blind to a steady slope and to a few steps. */
    double noise() {
        double[] v = values();
        if (v.length < 8) {
            return Double.NaN;
        }
        double[] second = new double[v.length - 2];
        for (int i = 0; i < second.length; i++) {
            second[i] = Math.abs(v[i] - 2 * v[i + 1] + v[i + 2]);
        }
        return SIGMA_OF_DIFFERENCES * StatUtils.percentile(second, 50);
    }

    /** Whether first and second half agree within the share of the value, or within the scatter. */
    boolean stands(double share) {
        double[] v = values();
        if (v.length < 4) {
            return false;
        }
        int half = v.length / 2;
        double first = StatUtils.mean(v, 0, half);
        double second = StatUtils.mean(v, v.length - half, half);
        double scatter = Math.sqrt(StatUtils.variance(v) / half);
        return Math.abs(second - first) < Math.max(share * Math.abs(second), 2 * scatter);
    }

    double[] values() {
        return samples.stream().mapToDouble(Sample::value).toArray();
    }
}
