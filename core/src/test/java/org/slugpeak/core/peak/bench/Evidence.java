package org.slugpeak.core.peak.bench;

import org.apache.commons.math3.special.Erf;

/** What readings say for a fall against none, where the law of the noise is known. */
interface Evidence {

    /**
     * What one reading adds, given those before it.
     *
     * @param reading its place
     * @param fall the mean of each reading if it has fallen, less its mean if it has not; 0 before the fall
     * @param whitened the falls before this one as they stand out of what the noise before them foretells; filled as needed
     * @param first place of the first reading of the fall
     * @return natural logarithm of the ratio of the likelihoods
     */
    double of(int reading, double[] fall, double[] whitened, int first);

    /** Makes it for the readings of one travel. */
    interface Law {
        /**
         * Knows the readings.
         *
         * @param seconds their times
         * @param values what was read
         * @param means what would have been read without noise if nothing fell after the top
         */
        Evidence of(double[] seconds, double[] values, double[] means);
    }

    /** White normal noise, one sigma as part of the top: Wald, Sequential Analysis, 1947, section 3.1. */
    static Law white(double sigma) {
        return (seconds, values, means) ->
                (i, fall, whitened, first) -> fall[i] * (values[i] - means[i] - fall[i] / 2) / (sigma * sigma);
    }

    /** The same, rounded to a digit: the probability of each digit. */
    static Law rounded(double sigma, double digit) {
        return (seconds, values, means) ->
                (i, fall, whitened, first) -> logOfDigit(values[i] - means[i] - fall[i], sigma, digit)
                        - logOfDigit(values[i] - means[i], sigma, digit);
    }

    private static double logOfDigit(double offset, double sigma, double digit) {
        double scale = sigma * Math.sqrt(2);
        double twice = Erf.erf((offset - digit / 2) / scale, (offset + digit / 2) / scale);
        return Math.log(Math.max(twice, Double.MIN_NORMAL));
    }
}
