package org.slugpeak.core.receiver;

/**
 * A coil with its series loss, tuned by a capacitor. Values that are not positive are refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param inductanceHenry of the coil; positive
 * @param capacitanceFarad across the coil; positive
 * @param seriesOhm loss in series with the coil; positive
 */
public record Tank(double inductanceHenry, double capacitanceFarad, double seriesOhm) {

    public Tank {
        if (!(inductanceHenry > 0 && capacitanceFarad > 0 && seriesOhm > 0)) {
            throw new IllegalArgumentException("a tank needs positive inductance, capacitance and loss");
        }
    }

    /**
     * The tank that resonates at a frequency, by {@code w^2 L C = 1}, with the loss {@code r = w L / Q}.
     *
     * @param frequencyHz positive
     * @param capacitanceFarad positive
     * @param q quality factor at resonance; positive
     * @return the tank
     */
    public static Tank tuned(double frequencyHz, double capacitanceFarad, double q) {
        double omega = 2 * Math.PI * frequencyHz;
        double inductance = 1 / (omega * omega * capacitanceFarad);
        return new Tank(inductance, capacitanceFarad, omega * inductance / q);
    }

    /**
     * The same tank with its slug moved: only the inductance follows, the loss stays.
     *
     * @param fraction change of inductance as a fraction of the present one; more than -1
     * @return the tank with the other inductance
     */
    public Tank withInductanceChanged(double fraction) {
        return new Tank(inductanceHenry * (1 + fraction), capacitanceFarad, seriesOhm);
    }

    /**
     * The same tank with its trimmer turned: only the capacitance follows, the loss stays.
     *
     * @param fraction change of capacitance as a fraction of the present one; more than -1
     * @return the tank with the other capacitance
     */
    public Tank withCapacitanceChanged(double fraction) {
        return new Tank(inductanceHenry, capacitanceFarad * (1 + fraction), seriesOhm);
    }

    /**
     * The same tank with a resistor across it, as its equivalent series loss at resonance.
     *
     * @param parallelOhm positive; infinite for none
     * @return the damped tank
     */
    public Tank dampedBy(double parallelOhm) {
        return new Tank(
                inductanceHenry, capacitanceFarad, seriesOhm + inductanceHenry / (capacitanceFarad * parallelOhm));
    }

    /**
     * Where it resonates.
     *
     * @return hertz
     */
    public double resonanceHz() {
        return 1 / (2 * Math.PI * Math.sqrt(inductanceHenry * capacitanceFarad));
    }

    /**
     * The quality factor at resonance.
     *
     * @return positive
     */
    public double q() {
        return Math.sqrt(inductanceHenry / capacitanceFarad) / seriesOhm;
    }

    /**
     * The reactance around the loop of coil and capacitor.
     *
     * @param omega angular frequency in radians per second; positive
     * @return ohm; 0 at resonance, positive above it
     */
    double loopReactanceOhm(double omega) {
        return omega * inductanceHenry - 1 / (omega * capacitanceFarad);
    }
}
