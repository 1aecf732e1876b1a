package org.slugpeak.core.signal;

/**
 * Power into the voice coil, or into a resistor in its place: P = V^2 / R. The impedance of a voice coil near 400 Hz is about
 * its nominal one; its DC resistance is about 0.8 of that (common practice, no source).
 */
public final class OutputPower {

    /**
     * The standard output of sets that can give 0.1 to 1 W, milliwatts; smaller ones have 5 mW (IRE Standards on Radio Receivers, 1948,
     * from memory). In alignment it is the usual one for larger sets, too, since it keeps the gain control at rest (common
     * practice, no source).
     */
    public static final double STANDARD_MILLIWATTS = 50;

    /** The standard output for sets that can give 1 W or more, milliwatts (IRE Standards on Radio Receivers, 1948, from memory). */
    public static final double LARGE_STANDARD_MILLIWATTS = 500;

    private OutputPower() {}

    /**
     * Power from voltage.
     *
     * @param voltsRms not negative
     * @param ohms positive
     * @return milliwatts
     */
    public static double milliwatts(double voltsRms, double ohms) {
        return 1000 * voltsRms * voltsRms / ohms;
    }

    /**
     * Voltage for a power: 50 mW into 3.2 ohm is 0.400 V.
     *
     * @param milliwatts not negative
     * @param ohms positive
     * @return volts RMS
     */
    public static double volts(double milliwatts, double ohms) {
        return Math.sqrt(milliwatts / 1000 * ohms);
    }
}
