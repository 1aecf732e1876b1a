package org.slugpeak.core.receiver;

/**
 * Three dial frequencies where oscillator and signal circuit shall be exactly one intermediate frequency apart; refused with
 * an {@link IllegalArgumentException} unless positive and ascending. Immutable; any thread may use it.
 *
 * @param lowHz lowest, Hz
 * @param middleHz middle, Hz
 * @param highHz highest, Hz
 */
public record TrackingPoints(double lowHz, double middleHz, double highHz) {

    public TrackingPoints {
        if (!(0 < lowHz && lowHz < middleHz && middleHz < highHz) || !Double.isFinite(highHz)) {
            throw new IllegalArgumentException("tracking points must be positive and ascending");
        }
    }
}
