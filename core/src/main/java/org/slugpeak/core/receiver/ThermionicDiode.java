package org.slugpeak.core.receiver;

/**
 * A valve diode. Where it holds electrons back, the current rises exponentially with {@code kT/q} of the cathode (retarding
 * field, W. Schottky); from the joint on it follows the space charge, {@code i = G (v + u)^1.5} (C. D. Child, I. Langmuir).
 * Value and slope meet where {@code v + u = 1.5 kT/q}. The joint is a convention: against the exact planar diode the voltage
 * that such a diode leaves on a load is up to 0.8 dB low.
 *
 * <p>Immutable; any thread may use it.
 *
 * @param cathodeKelvin temperature of the cathode, kelvin; oxide cathodes 1000 to 1150, from memory; positive
 * @param perveance G, in ampere per volt to the power of 1.5; positive
 * @param contactVolts u, what the contact potential adds to the voltage from cathode to anode; any finite number
 */
public record ThermionicDiode(double cathodeKelvin, double perveance, double contactVolts) {

    /** Boltzmann's constant over the charge of the electron; both exact in the SI of 2019. */
    private static final double VOLTS_PER_KELVIN = 1.380649e-23 / 1.602176634e-19;

    /** Above so many times kT/q the space charge rules. */
    private static final double JOINT = 1.5;

    /**
     * The diode that leaves a known voltage across its load without a signal.
     *
     * @param cathodeKelvin temperature of the cathode, kelvin; positive
     * @param perveance in ampere per volt to the power of 1.5; positive
     * @param restVolts across the load; positive; usually 0.1 to 1, from memory
     * @param loadOhm the load; positive
     * @return the diode
     */
    public static ThermionicDiode resting(double cathodeKelvin, double perveance, double restVolts, double loadOhm) {
        double thermal = VOLTS_PER_KELVIN * cathodeKelvin;
        double joint = perveance * Math.pow(JOINT * thermal, 1.5);
        double current = restVolts / loadOhm;
        double drive = current < joint
                ? JOINT * thermal + thermal * Math.log(current / joint)
                : Math.pow(current / perveance, 2.0 / 3);
        return new ThermionicDiode(cathodeKelvin, perveance, drive + restVolts);
    }

    /**
     * The thermal voltage of the cathode, kT/q.
     *
     * @return volts
     */
    public double thermalVolts() {
        return VOLTS_PER_KELVIN * cathodeKelvin;
    }

    /**
     * The current that flows.
     *
     * @param anodeVolts from cathode to anode; any finite number
     * @return ampere; positive
     */
    public double ampere(double anodeVolts) {
        double drive = anodeVolts + contactVolts;
        double joint = JOINT * thermalVolts();
        return drive > joint
                ? perveance * drive * Math.sqrt(drive)
                : perveance * joint * Math.sqrt(joint) * Math.exp((drive - joint) / thermalVolts());
    }
}
