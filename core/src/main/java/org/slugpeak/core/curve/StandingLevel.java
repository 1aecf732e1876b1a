package org.slugpeak.core.curve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Mean of the readings of the last while, and whether they stand: the means of the two halves agree within a tenth of a decibel
 * or within what the scatter of the readings allows. One thread at a time.
 */
final class StandingLevel {

    private record Level(long tNanos, double value) {}

    private static final double STAND_SHARE = 0.012;
    private static final double SIGMAS = 3;
    private static final int FEWEST = 4;

    /** Median of the difference of two normal deviates of one sigma, without its sign. */
    private static final double MEDIAN_STEP_SIGMAS = 0.954;

    /** A reading that comes every so often cannot fill the time to its last moment. */
    private static final double NEARLY = 0.75;

    private final long lengthNanos;
    private final Deque<Level> levels = new ArrayDeque<>();

    StandingLevel(long lengthNanos) {
        this.lengthNanos = lengthNanos;
    }

    void see(long tNanos, double value) {
        levels.addLast(new Level(tNanos, value));
        while (levels.size() > FEWEST && levels.getFirst().tNanos() < tNanos - lengthNanos) {
            levels.removeFirst();
        }
    }

    void forget() {
        levels.clear();
    }

    boolean stands() {
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

    double mean() {
        return mean(levels.stream().map(Level::value).toList());
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
