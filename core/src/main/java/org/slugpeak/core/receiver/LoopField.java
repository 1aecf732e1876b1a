package org.slugpeak.core.receiver;

/**
 * Field that a transmitting coil lays upon a receiver's loop on the same axis; refused with an
 * {@link IllegalArgumentException} unless turns, radius and distance are positive. Source: field on the axis of a circular
 * current (Biot and Savart), times the impedance of free space; Terman and Pettit, Electronic Measurements, 1952, gives the
 * same far away ({@code 47.15 N D^2 I / d^3}). Immutable; any thread may use it.
 *
 * @param turns number of turns
 * @param radiusMetres radius of the coil
 * @param distanceMetres from coil to loop
 */
public record LoopField(double turns, double radiusMetres, double distanceMetres) {

    /** Impedance of free space, ohm. */
    private static final double FREE_SPACE_OHMS = 376.730313;

    private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

    public LoopField {
        if (!(turns > 0 && radiusMetres > 0 && distanceMetres > 0)) {
            throw new IllegalArgumentException("turns, radius and distance must be positive");
        }
    }

    /**
     * Current that a generator drives through the coil: {@code E / |R + j 2 pi f L|}.
     *
     * @param emfVolts open-circuit voltage of the generator, V
     * @param resistanceOhms generator and series resistance together, ohm, positive
     * @param inductanceHenry of the coil, H; 0 to leave it out
     * @param frequencyHz Hz
     * @return A
     */
    public static double currentAmperes(
            double emfVolts, double resistanceOhms, double inductanceHenry, double frequencyHz) {
        return emfVolts / Math.hypot(resistanceOhms, 2 * Math.PI * frequencyHz * inductanceHenry);
    }

    /**
     * Equivalent field strength: {@code 377 N I r^2 / (2 (r^2 + d^2)^1.5)}.
     *
     * @param currentAmperes through the coil, A
     * @return V/m
     */
    public double coaxialVoltsPerMetre(double currentAmperes) {
        double square = radiusMetres * radiusMetres;
        double cube = Math.pow(square + distanceMetres * distanceMetres, 1.5);
        return FREE_SPACE_OHMS * turns * currentAmperes * square / (2 * cube);
    }

    /**
     * Whether the formula may be trusted: the distance is more than twice the larger coil's diameter.
     *
     * @param loopDiameterMetres largest measure of the receiver's loop
     * @return false where the loop is too near for one figure to hold over all of it
     */
    public boolean isFarEnough(double loopDiameterMetres) {
        return distanceMetres > 2 * Math.max(2 * radiusMetres, loopDiameterMetres);
    }

    /**
     * Whether the near field rules: the distance is less than the wavelength over 2 pi.
     *
     * @param frequencyHz Hz
     * @return false where radiation must be counted too
     */
    public boolean isNearField(double frequencyHz) {
        return distanceMetres < LIGHT_METRES_PER_SECOND / frequencyHz / (2 * Math.PI);
    }
}
