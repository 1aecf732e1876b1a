package org.slugpeak.core.curve;

import org.slugpeak.core.word.Refused;

/**
 * One reading at one generator frequency; refused with an {@link IllegalArgumentException} unless the frequency is positive and
 * both are finite. Immutable; any thread may use it.
 *
 * @param hz generator frequency, Hz
 * @param level above the rest value, in the unit of the readings; negative below the zero of a discriminator
 */
public record ResponsePoint(double hz, double level) {

    private static final String NEEDS = "a point needs a positive frequency and a level";

    public ResponsePoint {
        if (!canBe(hz, level)) {
            throw new IllegalArgumentException(NEEDS);
        }
    }

    private static boolean canBe(double hz, double level) {
        return hz > 0 && Double.isFinite(hz + level);
    }

    /**
     * A point from numbers that somebody wrote.
     *
     * @param hz generator frequency, Hz
     * @param level above the rest value, in the unit of the readings; negative below the zero of a discriminator
     * @return the point
     * @throws Refused unless the frequency is positive and both are finite
     */
    public static ResponsePoint of(double hz, double level) throws Refused {
        if (!canBe(hz, level)) {
            throw new Refused(NEEDS);
        }
        return new ResponsePoint(hz, level);
    }
}
