package org.slugpeak.cli.report;

import org.slugpeak.core.curve.Estimate;

/**
 * What limits the levels of a turn, beside the last digit of the meter. Immutable; any thread may use it.
 *
 * @param noise one sigma of the best, in the unit of the readings; NaN where the log does not tell
 * @param beforeDbPerUnit how many dB one unit is at the level before; NaN where not known
 * @param afterDbPerUnit how many dB one unit is at the level after; NaN where not known
 */
public record TurnLimits(double noise, double beforeDbPerUnit, double afterDbPerUnit) {

    /** A reading is anywhere within its last digit: JCGM 100:2008, F.2.2.1. */
    static final double ROOT_12 = Math.sqrt(12);

    /**
     * One sigma of a level.
     *
     * @param step the last digit of the meter, in the unit; infinite where none was seen
     * @return in the unit; NaN where neither noise nor last digit is known
     */
    double sigma(double step) {
        boolean noStep = !Double.isFinite(step);
        if (Double.isNaN(noise)) {
            return noStep ? Double.NaN : step / ROOT_12;
        }
        return Math.hypot(noise, noStep ? 0 : step / ROOT_12);
    }

    /** A gain with the sigma of both levels that it is the difference of, dB. */
    Estimate gain(double gainDb, double step) {
        return new Estimate(gainDb, sigma(step) * Math.hypot(beforeDbPerUnit, afterDbPerUnit));
    }
}
