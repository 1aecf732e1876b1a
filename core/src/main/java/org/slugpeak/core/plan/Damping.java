package org.slugpeak.core.plan;

/**
 * A resistor across the partner winding while a slug of an over-coupled transformer is peaked. Peaking slug by slug without
 * it ends on one hump, with more output than the right setting has. Immutable; any thread may use it.
 *
 * @param winding across which winding
 * @param ohms value, ohm, positive
 * @param highTension whether the winding may stand at high tension, as every primary does
 */
public record Damping(String winding, double ohms, boolean highTension) {

    /** With this much coupling, in units of the critical one, peaking converges on the centre within two turns or so. */
    private static final double SAFE_KAPPA = 0.6;

    private static final double[] E12 = {1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2};

    public Damping {
        if (!(ohms > 0)) {
            throw new IllegalArgumentException("a damping resistor is above zero ohm");
        }
    }

    /**
     * A resistor across a winding of which nobody has said that no high tension stands there.
     *
     * @param winding across which winding
     * @param ohms value, ohm, positive
     */
    public Damping(String winding, double ohms) {
        this(winding, ohms, true);
    }

    /**
     * The same across a winding of which more is known.
     *
     * @param mayBeHigh whether it may stand at high tension
     * @return a copy
     */
    public Damping withHighTension(boolean mayBeHigh) {
        return new Damping(winding, ohms, mayBeHigh);
    }

    /**
     * The resistor that brings the coupling down to 0.6 of the critical one, from the E12 series (IEC 60063). With it the
     * winding's Q falls to {@code Q' = Q (0.6/kappa)^2}; the resistor is what makes {@code Q' X} out of {@code Q X}.
     *
     * @param winding across which winding
     * @param q quality factor of each winding, positive
     * @param kappa coupling in units of the critical one ({@code k Q}), above 0.6
     * @param reactanceOhms of the tank, {@code 1/(2 pi f C)}, ohm, positive
     * @return the next lower standard value
     * @throws IllegalArgumentException where no damping is needed
     */
    public static Damping suggested(String winding, double q, double kappa, double reactanceOhms) {
        if (!(kappa > SAFE_KAPPA)) {
            throw new IllegalArgumentException("coupling of " + kappa + " times critical needs no damping");
        }
        double parallel = q * reactanceOhms;
        double wanted = parallel * Math.pow(SAFE_KAPPA / kappa, 2);
        return new Damping(winding, standardBelow(parallel * wanted / (parallel - wanted)));
    }

    private static double standardBelow(double ohms) {
        double decade = Math.pow(10, Math.floor(Math.log10(ohms)));
        double best = decade;
        for (double each : E12) {
            if (each * decade <= ohms * (1 + 1e-9)) {
                best = each * decade;
            }
        }
        return best;
    }

    /**
     * The coupling that is left with this resistor in place.
     *
     * @param q quality factor of each winding
     * @param kappa coupling without it, in units of the critical one
     * @param reactanceOhms of the tank, ohm
     * @return in units of the critical coupling
     */
    public double remainingKappa(double q, double kappa, double reactanceOhms) {
        double parallel = q * reactanceOhms;
        double damped = parallel * ohms / (parallel + ohms);
        return kappa * Math.sqrt(damped / parallel);
    }
}
