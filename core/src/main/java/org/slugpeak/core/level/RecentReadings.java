package org.slugpeak.core.level;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.stat.StatUtils;

/**
 * The readings of the last while, at most {@value #MOST} of them: of a faster source than that the while is shorter. Nothing is
 * allocated per reading once the store has grown to its size. One thread at a time.
 */
final class RecentReadings {

    /** A power of two: four seconds of a thousand readings a second. */
    private static final int MOST = 4096;

    private static final int FEWEST_KEPT = 5;

    /** So many of the newest are enough for a median or a scatter: to 5 percent of the scatter or better. */
    private static final int ENOUGH_FOR_A_MEDIAN = 512;

    /** From the scatter of second differences of white noise (sqrt 6) and of a median absolute value (1.4826). */
    private static final double SIGMA_OF_DIFFERENCES = 1.4826 / Math.sqrt(6);

    /** The top of a circuit that is rocked over bends by 2 percent in three tenths of a second, where it is turned back by 7: chosen between. */
    private static final double BOW = 3;

    private final long spanNanos;
    private long[] times = new long[64];
    private double[] readings = new double[64];
    private int first;
    private int size;

    RecentReadings(double spanSeconds) {
        this.spanNanos = (long) (spanSeconds * 1e9);
    }

    void add(long tNanos, double value) {
        if (size == times.length) {
            makeRoom();
        }
        int at = at(size);
        times[at] = tNanos;
        readings[at] = value;
        size++;
        while (size > FEWEST_KEPT && tNanos - times[first] > spanNanos) {
            dropFirst();
        }
    }

    private void makeRoom() {
        if (size == MOST) {
            dropFirst();
            return;
        }
        long[] moreTimes = new long[2 * size];
        double[] moreReadings = new double[2 * size];
        for (int i = 0; i < size; i++) {
            moreTimes[i] = times[at(i)];
            moreReadings[i] = readings[at(i)];
        }
        times = moreTimes;
        readings = moreReadings;
        first = 0;
    }

    private void dropFirst() {
        first = at(1);
        size--;
    }

    /** So many of the newest are forgotten, as long as enough are left. */
    void dropNewest(int count) {
        size -= Math.max(0, Math.min(count, size - FEWEST_KEPT));
    }

    private int at(int index) {
        return (first + index) & (times.length - 1);
    }

    void clear() {
        first = 0;
        size = 0;
    }

    /** From now on what another has kept is the last while. */
    void takeOver(RecentReadings other) {
        clear();
        for (int i = 0; i < other.size; i++) {
            add(other.times[other.at(i)], other.readings[other.at(i)]);
        }
    }

    int size() {
        return size;
    }

    long spannedNanos() {
        return size == 0 ? 0 : times[at(size - 1)] - times[first];
    }

    long firstNanos() {
        return times[first];
    }

    long lastNanos() {
        return times[at(size - 1)];
    }

    /** Through all that is kept, each as a level that is made of it. */
    DecibelLine line(DoubleUnaryOperator level) {
        DecibelLine line = new DecibelLine();
        for (int i = 0; i < size; i++) {
            line.add(times[at(i)], level.applyAsDouble(readings[at(i)]));
        }
        return line;
    }

    double median() {
        return size == 0 ? Double.NaN : StatUtils.percentile(newest(ENOUGH_FOR_A_MEDIAN), 50);
    }

    double standardDeviation() {
        return size < 3 ? Double.NaN : Math.sqrt(StatUtils.variance(values()));
    }

    /** The reading so many before the last one; NaN where there were not so many. */
    double last(int before) {
        return size <= before ? Double.NaN : readings[at(size - 1 - before)];
    }

    /** The lowest of those that the median is taken of; NaN where there is none. */
    double lowest() {
        return StatUtils.min(newest(ENOUGH_FOR_A_MEDIAN));
    }

    /** Scatter from reading to reading, blind to a steady slope and to a few steps. */
    double noise() {
        double[] second = secondDifferences();
        return second.length < 6 ? Double.NaN : SIGMA_OF_DIFFERENCES * StatUtils.percentile(second, 50);
    }

    /** What {@link #noise} does not exceed, for less: half of the sizes reach their median, which is so at most twice their mean (Markov). */
    double mostNoise() {
        return SIGMA_OF_DIFFERENCES * 2 * StatUtils.mean(secondDifferences());
    }

    /** Sizes of them. */
    private double[] secondDifferences() {
        double[] v = newest(ENOUGH_FOR_A_MEDIAN);
        double[] second = new double[Math.max(0, v.length - 2)];
        for (int i = 0; i < second.length; i++) {
            second[i] = Math.abs(v[i] - 2 * v[i + 1] + v[i + 2]);
        }
        return second;
    }

    /** Whether first and second half agree within the share of the value, or within the scatter. */
    boolean stands(double share) {
        double[] v = values();
        int half = v.length / 2;
        return v.length >= 4 && agree(v, share, StatUtils.mean(v, 0, half), StatUtils.mean(v, v.length - half, half));
    }

    /** Whether the middle agrees with both ends, too: what falls and rises alike has equal halves, and stands nowhere. */
    boolean staysLevel(double share) {
        double[] v = values();
        int quarter = v.length / 4;
        if (quarter < 1 || !stands(share)) {
            return false;
        }
        double ends = (StatUtils.mean(v, 0, quarter) + StatUtils.mean(v, v.length - quarter, quarter)) / 2;
        return agree(v, BOW * share, ends, StatUtils.mean(v, quarter, v.length - 2 * quarter));
    }

    private static boolean agree(double[] v, double share, double one, double other) {
        int half = v.length / 2;
        double scatter = Math.sqrt(StatUtils.variance(v) / half);
        return Math.abs(other - one) < Math.max(share * Math.abs(other), 2 * scatter);
    }

    private double[] values() {
        return newest(size);
    }

    /** The newest, at most so many, the oldest of them first. */
    private double[] newest(int most) {
        int count = Math.min(most, size);
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = readings[at(size - count + i)];
        }
        return values;
    }
}
