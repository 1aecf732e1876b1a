package org.slugpeak.bridge.source;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Location and spread by medians, over the last so many numbers. The median absolute deviation times 1.4826 is the standard
 * deviation of a normal distribution (P. J. Rousseeuw and C. Croux, "Alternatives to the Median Absolute Deviation", Journal
 * of the American Statistical Association 88 (1993) 1273, section 1). One thread at a time.
 */
final class RobustSpread {

    /** One over the third quartile of the standard normal distribution. */
    static final double TO_STANDARD_DEVIATION = 1.482602218505602;

    /** A minute of the fastest source; the arrays stay small. */
    private static final int KEPT = 1 << 16;

    private static final int FIRST_SIZE = 256;

    private double[] numbers = new double[FIRST_SIZE];
    private int count;
    private int next;

    void add(double number) {
        if (next == numbers.length && numbers.length < KEPT) {
            numbers = Arrays.copyOf(numbers, 2 * numbers.length);
        }
        next %= numbers.length;
        numbers[next] = number;
        next++;
        count = Math.min(count + 1, KEPT);
    }

    int count() {
        return count;
    }

    OptionalDouble median() {
        return median(Arrays.copyOf(numbers, count));
    }

    /** Standard deviation about the median; empty before two numbers. */
    OptionalDouble aboutMedian() {
        OptionalDouble median = median();
        return count < 2 || median.isEmpty() ? OptionalDouble.empty() : about(median.getAsDouble());
    }

    /** Standard deviation about a known centre; empty before two numbers. */
    OptionalDouble about(double centre) {
        if (count < 2) {
            return OptionalDouble.empty();
        }
        double[] distances = Arrays.stream(numbers, 0, count)
                .map(each -> Math.abs(each - centre))
                .toArray();
        return OptionalDouble.of(TO_STANDARD_DEVIATION * median(distances).orElse(0));
    }

    long countAbove(double limit) {
        return Arrays.stream(numbers, 0, count).filter(each -> each > limit).count();
    }

    private static OptionalDouble median(double[] scratch) {
        if (scratch.length == 0) {
            return OptionalDouble.empty();
        }
        Arrays.sort(scratch);
        int middle = scratch.length / 2;
        return OptionalDouble.of(
                scratch.length % 2 == 1 ? scratch[middle] : (scratch[middle - 1] + scratch[middle]) / 2);
    }
}
