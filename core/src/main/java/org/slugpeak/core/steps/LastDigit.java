package org.slugpeak.core.steps;

/** The resolution of a meter, as the values that it showed give it away. One thread at a time. */
final class LastDigit {

    /**
     * The powers of ten that are doubles without error. A number of at most 15 digits, divided by one of them, is the very
     * double that reading the decimal gives (W. D. Clinger, "How to Read Floating Point Numbers Accurately", PLDI 1990,
     * section 3), so that the digits need not be kept beside the value.
     */
    private static final int MOST_PLACES = 22;

    private double finest = Double.NaN;

    /** Takes a value; a zero says nothing of the digits behind the point. */
    void see(double value) {
        if (value != 0) {
            double unit = unit(value);
            finest = finest < unit ? finest : unit;
        }
    }

    /** One unit of the last place, as fine as any value has shown it: a place that is 0 by chance counts. NaN before that. */
    double resolution() {
        return finest;
    }

    private static double unit(double value) {
        double power = 1;
        for (int places = 0; places <= MOST_PLACES; places++, power *= 10) {
            if (Math.rint(value * power) / power == value) {
                return 1 / power;
            }
        }
        return Math.ulp(value);
    }
}
