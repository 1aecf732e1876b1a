package org.slugpeak.core.receiver;

/**
 * Modified Bessel functions of the first kind, times {@code exp(-x)}, for x of 0 or more. Polynomials 9.8.1 to 9.8.4 of M.
 * Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964; relative error below 3e-7. (Commons Math has those of
 * real order J only.) All methods are pure; any thread may use them.
 */
final class ModifiedBessel {

    private static final double JOINT = 3.75;

    private static final double[] I0_SMALL = {1, 3.5156229, 3.0899424, 1.2067492, 0.2659732, 0.0360768, 0.0045813};
    private static final double[] I1_SMALL = {
        0.5, 0.87890594, 0.51498869, 0.15084934, 0.02658733, 0.00301532, 0.00032411
    };
    private static final double[] I0_LARGE = {
        0.39894228, 0.01328592, 0.00225319, -0.00157565, 0.00916281, -0.02057706, 0.02635537, -0.01647633, 0.00392377
    };
    private static final double[] I1_LARGE = {
        0.39894228, -0.03988024, -0.00362018, 0.00163801, -0.01031555, 0.02282967, -0.02895312, 0.01787654, -0.00420059
    };

    private ModifiedBessel() {}

    static double scaledI0(double x) {
        return x < JOINT
                ? polynomial(I0_SMALL, x * x / (JOINT * JOINT)) * Math.exp(-x)
                : polynomial(I0_LARGE, JOINT / x) / Math.sqrt(x);
    }

    static double scaledI1(double x) {
        return x < JOINT
                ? x * polynomial(I1_SMALL, x * x / (JOINT * JOINT)) * Math.exp(-x)
                : polynomial(I1_LARGE, JOINT / x) / Math.sqrt(x);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
