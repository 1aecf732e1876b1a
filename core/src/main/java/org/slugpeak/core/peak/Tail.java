package org.slugpeak.core.peak;

/**
 * Quantiles of small tail probabilities.
 *
 * <p><b>References.</b> Normal: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.12, right to 1.5 percent. Student's, right to 4 percent:
 * Wallace, Bounds on normal approximations to Student's and the chi-square distributions, Ann. Math. Statist. 30 (1959) 1121, from memory.
 */
final class Tail {

    private Tail() {}

    /**
     * How many sigma a normal deviate exceeds with a probability.
     *
     * @param probability up to a thousandth
     */
    static double normal(double probability) {
        double twice = -2 * Math.log(probability);
        return Math.sqrt(twice - Math.log(2 * Math.PI * twice));
    }

    /** What corresponds to a normal quantile where sigma is known with so many degrees of freedom. */
    static double student(double normal, double degrees) {
        double stretched = normal * (8 * degrees + 3) / (8 * degrees + 1);
        return Math.sqrt(degrees * Math.expm1(stretched * stretched / degrees));
    }
}
