package org.slugpeak.core.receiver;

/** Power in a load and the voltage across it: {@code P = V^2 / R}. All methods are pure; any thread may use them. */
public final class OutputPower {

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
