package org.slugpeak.core.curve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Mean of the readings of the last while, and whether they stand: the means of the two halves agree within a tenth of a decibel
 * or within what the scatter of the readings allows. One thread at a time.
 */
public final class StandingLevel {

    private record Level(long tNanos, double value) {}

    private static final double STAND_SHARE = 0.012;
    private static final double SIGMAS = 3;
    private static final int FEWEST = 4;
    private static final int BLOCKS = 6;

    /** Median of the difference of two normal deviates of one sigma, without its sign. */
    private static final double MEDIAN_STEP_SIGMAS = 0.954;

    /** A reading that comes every so often cannot fill the time to its last moment. */
    private static final double NEARLY = 0.75;

    private final long lengthNanos;
    private final Deque<Level> levels = new ArrayDeque<>();

    /**
     * Nothing seen yet.
     *
     * @param lengthNanos over which the mean is taken
     */
    public StandingLevel(long lengthNanos) {
        this.lengthNanos = lengthNanos;
    }

    /**
     * Takes a reading.
     *
     * @param tNanos when it was read
     * @param value in any unit
     */
    public void see(long tNanos, double value) {
        levels.addLast(new Level(tNanos, value));
        while (levels.size() > FEWEST && levels.getFirst().tNanos() < tNanos - lengthNanos) {
            levels.removeFirst();
        }
    }

    /** Begins anew. */
    public void forget() {
        levels.clear();
    }

    /**
     * Whether the readings stand.
     *
     * @return false, too, before the time is filled
     */
    public boolean stands() {
        if (levels.size() < FEWEST
                || levels.getLast().tNanos() - levels.getFirst().tNanos() < NEARLY * lengthNanos) {
            return false;
        }
        List<Double> values = levels.stream().map(Level::value).toList();
        int half = values.size() / 2;
        double moved = mean(values.subList(half, values.size())) - mean(values.subList(0, half));
        double noise = SIGMAS * scatter(values) * Math.sqrt(2.0 / half);
        return Math.abs(moved) <= Math.max(STAND_SHARE * Math.abs(mean(values)), noise);
    }

    /**
     * Mean of what was seen in the time.
     *
     * @return in the unit of the readings; NaN where nothing was
     */
    public double mean() {
        return mean(levels.stream().map(Level::value).toList());
    }

    /**
     * How well the mean is known: from the means of n = {@value #BLOCKS} blocks, since neighbouring readings of one meter are not
     * independent; {@code s / sqrt(n) * sqrt((n-1)/(n-3))}, as so few do not know their own scatter (JCGM 101:2008, 6.4.9.2).
     *
     * @return one standard deviation, in the unit of the readings; NaN with fewer readings than blocks
     */
    public double sigma() {
        List<Double> values = levels.stream().map(Level::value).toList();
        if (values.size() < BLOCKS) {
            return Double.NaN;
        }
        double[] means = IntStream.range(0, BLOCKS)
                .mapToDouble(i -> mean(values.subList(i * values.size() / BLOCKS, (i + 1) * values.size() / BLOCKS)))
                .toArray();
        return Math.sqrt(StatUtils.variance(means) / BLOCKS * (BLOCKS - 1) / (BLOCKS - 3));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    /** From the median step between neighbours, which a single move of the generator does not change. */
    private static double scatter(List<Double> values) {
        double[] steps = IntStream.range(1, values.size())
                .mapToDouble(i -> Math.abs(values.get(i) - values.get(i - 1)))
                .sorted()
                .toArray();
        return steps[steps.length / 2] / MEDIAN_STEP_SIGMAS;
    }
}
