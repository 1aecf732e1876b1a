package org.slugpeak.core.receiver;

/**
 * A limiter: its grid is a diode with a grid leak, read by the meter, and loads the winding before it; its valve passes on no more
 * than it can. With the bias of the grid leak the output may fall again as the signal rises, so that the next grid dips in tune.
 * Immutable; any thread may use it.
 *
 * @param grid diode of grid and cathode, leak, and resistance of the winding in tune
 * @param valve what is passed on
 * @param leakBiased whether the grid leak makes the bias; otherwise it stays as it is
 */
public record Limiter(DiodeDetector grid, ValveStage valve, boolean leakBiased) {

    private static final int HALVINGS = 60;

    /**
     * What the grid is left with.
     *
     * @param freePeakVolts without the grid's current; 0 or more
     * @return peak volts
     */
    public double gridPeakVolts(double freePeakVolts) {
        double low = 0;
        double high = freePeakVolts;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (grid.carrierPeakVolts(middle) < freePeakVolts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * What the meter sees more than without a signal.
     *
     * @param gridPeakVolts at the grid; 0 or more
     * @return volts, as a magnitude
     */
    public double riseVolts(double gridPeakVolts) {
        return grid.dcVolts(gridPeakVolts) - grid.restVolts();
    }

    /**
     * What it passes on.
     *
     * @param gridPeakVolts at the grid; 0 or more
     * @return fundamental of the anode current, ampere, peak
     */
    public double outputAmpere(double gridPeakVolts) {
        return leakBiased
                ? valve.fundamentalAmpere(gridPeakVolts, grid.dcVolts(gridPeakVolts))
                : valve.fundamentalAmpere(gridPeakVolts);
    }
}
