package org.slugpeak.core.scale;

/**
 * A corrected frequency or dial setting and how well it is known. Immutable; any thread may use it.
 *
 * @param hz Hz
 * @param sigmaHz standard uncertainty that the known points and the reading of the dial bring, Hz (GUM, JCGM 100:2008, 5.1.2)
 * @param bowHz how far the scale may bend away from the straight line between two points, Hz, not negative; NaN where there
 *     are only two points and so nothing is known of it
 */
public record ScaleEstimate(double hz, double sigmaHz, double bowHz) {

    /**
     * Both parts together.
     *
     * @return Hz; the bow is left out where it is not known
     */
    public double combinedHz() {
        return Double.isNaN(bowHz) ? sigmaHz : Math.hypot(sigmaHz, bowHz);
    }
}
