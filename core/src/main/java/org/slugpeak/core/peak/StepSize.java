package org.slugpeak.core.peak;

/**
 * The resolution of the readings: the greatest common divisor of their differences (Euclid's algorithm on real numbers
 * with a tolerance). It finds the last digit of a meter after a few readings and runs to zero on continuous data. It is
 * taken afresh every {@value #WINDOW} differences, so that another range with another last digit is noticed. One thread at a time.
 */
public final class StepSize {

    private static final int WINDOW = 64;
    /** Fewer differences than this may all be multiples of the step by chance. */
    private static final int ENOUGH = 8;
    /** Remainders below this part of the divisor are rounding of decimal fractions. */
    private static final double TOLERANCE = 1e-4;
    /** A step finer than this part of the reading is no resolution that matters. */
    private static final double FINEST = 1e-7;

    private double before = Double.NaN;
    private double step;
    private int differences;

    /** Nothing seen yet. */
    public StepSize() {}

    /**
     * Takes two readings that follow each other.
     *
     * @param difference of the two, in their unit
     * @param level of one of them, in the same unit
     */
    public void add(double difference, double level) {
        double size = Math.abs(difference);
        double finest = FINEST * Math.abs(level);
        if (size <= finest) {
            return;
        }
        if (differences == 0) {
            step = size;
        } else if (step > 0) {
            step = divisor(step, size, finest);
        }
        if (++differences == WINDOW) {
            before = step;
            differences = 0;
            step = 0;
        }
    }

    /**
     * One unit of the last digit.
     *
     * @return in the unit of the readings; 0 where there is none
     */
    public double step() {
        if (Double.isNaN(before)) {
            return step;
        }
        return differences >= ENOUGH ? Math.max(step, before) : before;
    }

    private static double divisor(double a, double b, double finest) {
        double large = Math.max(a, b);
        double small = Math.min(a, b);
        while (small > finest) {
            double rest = Math.abs(large - small * Math.rint(large / small));
            if (rest <= TOLERANCE * small) {
                return small;
            }
            large = small;
            small = rest;
        }
        return 0;
    }
}
