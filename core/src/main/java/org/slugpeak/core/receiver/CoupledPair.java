package org.slugpeak.core.receiver;

import org.apache.commons.math3.complex.Complex;

/**
 * An IF transformer: two tanks, inductively coupled, driven by a current into the first and read across the second.
 *
 * <p>Exact mesh solution, no narrow-band approximation: with the loop impedances {@code Z = r + j(wL - 1/wC)} and
 * {@code M = k sqrt(L1 L2)},
 * {@code V2/I1 = (jwM / (jwC1 jwC2)) / (Z1 Z2 + w^2 M^2)}. Critical coupling {@code 1/sqrt(Q1 Q2)}: F. E. Terman, Radio
 * Engineers' Handbook, 1943, section 3. A slug changes the inductance only; loss and coupling coefficient stay.
 *
 * <p>Immutable; any thread may use it.
 *
 * @param primary driven side
 * @param secondary read side
 * @param coupling coefficient k, more than 0 and less than 1
 */
public record CoupledPair(Tank primary, Tank secondary, double coupling) {

    public CoupledPair {
        if (!(coupling > 0 && coupling < 1)) {
            throw new IllegalArgumentException("a coupling coefficient lies between 0 and 1, not at " + coupling);
        }
    }

    /**
     * The coupling that gives the greatest output at the centre.
     *
     * @param q1 quality factor of the primary; positive
     * @param q2 quality factor of the secondary; positive
     * @return the coefficient k
     */
    public static double criticalCoupling(double q1, double q2) {
        return 1 / Math.sqrt(q1 * q2);
    }

    /**
     * The coupling beyond which the response against frequency has a dip; the critical one where both Q are equal, more
     * where they are not: {@code sqrt((1/Q1^2 + 1/Q2^2)/2)}.
     *
     * @param q1 quality factor of the primary; positive
     * @param q2 quality factor of the secondary; positive
     * @return the coefficient k
     */
    public static double transitionalCoupling(double q1, double q2) {
        return Math.sqrt((1 / (q1 * q1) + 1 / (q2 * q2)) / 2);
    }

    /**
     * Secondary voltage per primary current.
     *
     * @param frequencyHz positive
     * @return ohm, with phase
     */
    public Complex transimpedance(double frequencyHz) {
        double omega = 2 * Math.PI * frequencyHz;
        double mutual = coupling * Math.sqrt(primary.inductanceHenry() * secondary.inductanceHenry());
        Complex z1 = new Complex(primary.seriesOhm(), primary.loopReactanceOhm(omega));
        Complex z2 = new Complex(secondary.seriesOhm(), secondary.loopReactanceOhm(omega));
        double capacities = omega * omega * primary.capacitanceFarad() * secondary.capacitanceFarad();
        Complex numerator = new Complex(0, -omega * mutual / capacities);
        return numerator.divide(z1.multiply(z2).add(omega * omega * mutual * mutual));
    }

    /**
     * Primary voltage per primary current: the capacitor beside the coil, in which the secondary shows as {@code w^2 M^2/Z2}.
     *
     * @param frequencyHz positive
     * @return ohm, with phase
     */
    public Complex inputImpedance(double frequencyHz) {
        double omega = 2 * Math.PI * frequencyHz;
        return coilImpedance(omega)
                .reciprocal()
                .add(new Complex(0, omega * primary.capacitanceFarad()))
                .reciprocal();
    }

    /** Of the primary's coil, with what the secondary reflects into it. */
    Complex coilImpedance(double omega) {
        double mutual = coupling * Math.sqrt(primary.inductanceHenry() * secondary.inductanceHenry());
        Complex reflected = new Complex(secondary.seriesOhm(), secondary.loopReactanceOhm(omega))
                .reciprocal()
                .multiply(omega * omega * mutual * mutual);
        return reflected.add(new Complex(primary.seriesOhm(), omega * primary.inductanceHenry()));
    }

    /**
     * The same transformer with its slugs moved.
     *
     * @param primaryFraction change of the primary's inductance as a fraction; more than -1
     * @param secondaryFraction change of the secondary's inductance as a fraction; more than -1
     * @return the transformer after it
     */
    public CoupledPair withSlugs(double primaryFraction, double secondaryFraction) {
        return new CoupledPair(
                primary.withInductanceChanged(primaryFraction),
                secondary.withInductanceChanged(secondaryFraction),
                coupling);
    }

    /**
     * The same transformer with another coupling.
     *
     * @param newCoupling coefficient k, between 0 and 1
     * @return the transformer with it
     */
    public CoupledPair withCoupling(double newCoupling) {
        return new CoupledPair(primary, secondary, newCoupling);
    }

    /**
     * The same transformer with its secondary damped.
     *
     * @param parallelOhm across the secondary; positive; infinite for none
     * @return the transformer with it
     */
    public CoupledPair withSecondaryDamped(double parallelOhm) {
        return new CoupledPair(primary, secondary.dampedBy(parallelOhm), coupling);
    }
}
