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
