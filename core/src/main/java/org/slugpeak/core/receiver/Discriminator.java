package org.slugpeak.core.receiver;

import org.apache.commons.math3.complex.Complex;

/**
 * A discriminator or ratio detector: the centre tap of the secondary is tied to the primary, so that two ideal peak diodes see
 * {@code E = Vp +- Vs/2}. Sources: D. E. Foster and S. W. Seeley, Proceedings of the IRE 25 (1937) 289; S. W. Seeley and J. Avins,
 * The Ratio Detector, RCA Review 8 (1947) 201; both from memory. Solved from the meshes, with the loss in series with each coil and
 * the diode loads counted in the Q. Where the loss lies changes the halves of a curve by some percent: it is a property of the
 * model. Immutable; any thread may use it.
 *
 * @param pair primary and secondary with everything connected
 * @param driveAmpere peak of the current that drives the primary; positive
 */
public record Discriminator(CoupledPair pair, double driveAmpere) {

    /**
     * What the diodes leave, in volts.
     *
     * @param upper volts of the half that is stronger above the centre; 0 or more
     * @param lower volts of the other half; 0 or more
     */
    public record Halves(double upper, double lower) {

        /**
         * The output of a discriminator; that of a ratio detector whose capacitor follows is half of it.
         *
         * @return volts, positive above the centre
         */
        public double difference() {
            return upper - lower;
        }

        /**
         * What stands on half a stabilising capacitor.
         *
         * @return volts
         */
        public double half() {
            return (upper + lower) / 2;
        }

        /**
         * The output of a ratio detector while its capacitor holds, for a volt on the whole of it.
         *
         * @return volts a volt, positive above the centre
         */
        public double held() {
            return (upper - lower) / (upper + lower) / 2;
        }
    }

    /**
     * One in tune: the difference is 0 at the frequency, the primary's admittance is real there, and the drive leaves a volt across
     * the primary.
     *
     * @param hz of the centre; positive
     * @param henry of either winding; positive
     * @param q1 quality factor of the primary; positive
     * @param q2 quality factor of the secondary; positive
     * @param kappa coupling in units of the critical one; positive
     * @return the detector
     */
    public static Discriminator tuned(double hz, double henry, double q1, double q2, double kappa) {
        double omega = 2 * Math.PI * hz;
        double k = kappa * CoupledPair.criticalCoupling(q1, q2);
        double reactance = omega * henry * (1 - 1 / (q1 * q2) - k * k);
        Tank secondary = new Tank(henry, 1 / (omega * reactance), omega * henry / q2);
        Tank open = new Tank(henry, secondary.capacitanceFarad(), omega * henry / q1);
        Complex coil = new CoupledPair(open, secondary, k).coilImpedance(omega).reciprocal();
        Tank primary = new Tank(henry, -coil.getImaginary() / omega, omega * henry / q1);
        CoupledPair pair = new CoupledPair(primary, secondary, k);
        return new Discriminator(pair, 1 / pair.inputImpedance(hz).abs());
    }

    /**
     * What the diodes leave of a steady carrier.
     *
     * @param hz its frequency; positive
     * @return both halves
     */
    public Halves at(double hz) {
        Complex across = pair.inputImpedance(hz).multiply(driveAmpere);
        Complex half = pair.transimpedance(hz).multiply(driveAmpere / 2);
        return new Halves(across.subtract(half).abs(), across.add(half).abs());
    }

    /**
     * The same with its windings turned.
     *
     * @param primaryFraction change of the primary's capacitance; more than -1
     * @param secondaryFraction change of the secondary's capacitance; more than -1
     * @return the detector after it, driven as before
     */
    public Discriminator withTrimmers(double primaryFraction, double secondaryFraction) {
        return new Discriminator(
                new CoupledPair(
                        pair.primary().withCapacitanceChanged(primaryFraction),
                        pair.secondary().withCapacitanceChanged(secondaryFraction),
                        pair.coupling()),
                driveAmpere);
    }
}
