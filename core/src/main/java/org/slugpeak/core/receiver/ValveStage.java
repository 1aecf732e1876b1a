package org.slugpeak.core.receiver;

/**
 * What a valve with a 3/2-power law passes on of a carrier at its grid: {@code i = K (v + cutoff)^1.5}, nothing beyond cutoff,
 * nothing more above a grid at 0 V, nothing more than the anode can give. K is set by the transconductance at the bias. Immutable;
 * any thread may use it.
 *
 * @param siemens transconductance at the bias; positive
 * @param biasVolts how far the grid stands below the cathode; 0 or more, less than the cutoff
 * @param cutoffVolts where no current is left; positive
 * @param largestAmpere what the anode can give; positive; infinite for no bound
 */
public record ValveStage(double siemens, double biasVolts, double cutoffVolts, double largestAmpere) {

    private static final int STEPS = 500;

    /**
     * Fundamental of the anode current at the bias.
     *
     * @param gridPeakVolts 0 or more
     * @return ampere, peak
     */
    public double fundamentalAmpere(double gridPeakVolts) {
        return fundamentalAmpere(gridPeakVolts, biasVolts);
    }

    /**
     * Fundamental of the anode current at a bias that the signal makes itself, as a grid leak does.
     *
     * @param gridPeakVolts 0 or more
     * @param ownBiasVolts how far the grid stands below the cathode; 0 or more
     * @return ampere, peak
     */
    public double fundamentalAmpere(double gridPeakVolts, double ownBiasVolts) {
        double law = siemens / (1.5 * Math.sqrt(cutoffVolts - biasVolts));
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double cosine = Math.cos((i + 0.5) * Math.PI / STEPS);
            double grid = Math.min(0, gridPeakVolts * cosine - ownBiasVolts);
            double drive = Math.max(0, grid + cutoffVolts);
            sum += Math.min(largestAmpere, law * drive * Math.sqrt(drive)) * cosine;
        }
        return 2 * sum / STEPS;
    }
}
