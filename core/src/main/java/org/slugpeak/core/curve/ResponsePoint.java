package org.slugpeak.core.curve;

/**
 * One reading at one generator frequency; refused with an {@link IllegalArgumentException} unless both are positive.
 * Immutable; any thread may use it.
 *
 * @param hz generator frequency, Hz
 * @param level magnitude above the rest value, in the unit of the readings
 */
public record ResponsePoint(double hz, double level) {

    public ResponsePoint {
        if (!(hz > 0 && level > 0) || !Double.isFinite(hz + level)) {
            throw new IllegalArgumentException("a point needs a positive frequency and a positive level");
        }
    }
}
