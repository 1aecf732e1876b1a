package org.slugpeak.core.curve;

import org.slugpeak.core.word.Refused;

/**
 * One reading at one generator frequency; refused with an {@link IllegalArgumentException} unless both are positive.
 * Immutable; any thread may use it.
 *
 * @param hz generator frequency, Hz
 * @param level magnitude above the rest value, in the unit of the readings
 */
public record ResponsePoint(double hz, double level) {

    private static final String NEEDS = "a point needs a positive frequency and a positive level";

    public ResponsePoint {
        if (!canBe(hz, level)) {
            throw new IllegalArgumentException(NEEDS);
        }
    }

    private static boolean canBe(double hz, double level) {
        return hz > 0 && level > 0 && Double.isFinite(hz + level);
    }

    /**
     * A point from numbers that somebody wrote.
     *
     * @param hz generator frequency, Hz
     * @param level magnitude above the rest value, in the unit of the readings
     * @return the point
     * @throws Refused unless both are positive
     */
    public static ResponsePoint of(double hz, double level) throws Refused {
        if (!canBe(hz, level)) {
            throw new Refused(NEEDS);
        }
        return new ResponsePoint(hz, level);
    }
}
