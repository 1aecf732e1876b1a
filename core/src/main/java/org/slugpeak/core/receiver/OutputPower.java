package org.slugpeak.core.receiver;

/**
 * Power in a load and the voltage across it: {@code P = V^2 / R}. The load is a voice coil, or a resistor in its place: the
 * impedance of a voice coil near 400 Hz is about its nominal one, its DC resistance about 0.8 of that (common practice, no
 * source). All methods are pure; any thread may use them.
 */
public final class OutputPower {

    /**
     * The standard output of sets that can give 0.1 to 1 W, watts; smaller ones have 5 mW (IRE Standards on Radio Receivers, 1948,
     * from memory). In alignment it is the usual one for larger sets, too, since it keeps the gain control at rest (common
     * practice, no source).
     */
    public static final double STANDARD_WATTS = 0.05;

    /** The standard output for sets that can give 1 W or more, watts (IRE Standards on Radio Receivers, 1948, from memory). */
    public static final double LARGE_STANDARD_WATTS = 0.5;

    private OutputPower() {}

    /**
     * Power of a voltage across a load.
     *
     * @param volts RMS
     * @param ohms load, positive
     * @return W
     */
    public static double watts(double volts, double ohms) {
        return volts * volts / ohms;
    }

    /**
     * Voltage that a power needs.
     *
     * @param watts not negative
     * @param ohms load, positive
     * @return V, RMS
     */
    public static double volts(double watts, double ohms) {
        return Math.sqrt(watts * ohms);
    }
}
