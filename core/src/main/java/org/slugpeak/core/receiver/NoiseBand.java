package org.slugpeak.core.receiver;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * The noise that an IF strip lets through: {@code sqrt(e^2 int |G|^2 df)}, e the noise of one hertz at its input. Worked out again
 * only where the strip has changed. One thread at a time.
 */
public final class NoiseBand {

    /** Boltzmann's constant, exact in the SI of 2019, times 290 K, times 4. */
    private static final double FOUR_KT = 4 * 1.380649e-23 * 290;

    /** Beyond three widths of one winding two transformers let a thousandth of the noise through. */
    private static final double REACH = 3;

    private static final int STEPS_A_SIDE = 24;

    private final double densitySquared;
    private final double centreHz;
    private final double stepHz;
    private double[] state = {};
    private double outputVolts;
    private double bandwidthHz;

    /**
     * A band.
     *
     * @param noiseOhm equivalent noise resistance at the input; 0 or more
     * @param centreHz of the strip
     * @param q quality factor of one winding, a ratio
     */
    public NoiseBand(double noiseOhm, double centreHz, double q) {
        this.densitySquared = FOUR_KT * noiseOhm;
        this.centreHz = centreHz;
        this.stepHz = REACH * centreHz / q / STEPS_A_SIDE;
    }

    /**
     * Takes the strip as it is now; the gain is asked for only if the state is not the last one.
     *
     * @param gain from the input, by frequency in Hz
     * @param newState everything that the gain depends on, each in any unit
     */
    public void follow(DoubleUnaryOperator gain, double... newState) {
        if (Arrays.equals(state, newState)) {
            return;
        }
        state = newState;
        double area = 0;
        double strongest = 0;
        for (int i = -STEPS_A_SIDE; i <= STEPS_A_SIDE; i++) {
            double here = gain.applyAsDouble(centreHz + i * stepHz);
            area += here * here * stepHz;
            strongest = Math.max(strongest, here * here);
        }
        outputVolts = Math.sqrt(densitySquared * area);
        bandwidthHz = area / strongest;
    }

    /**
     * All noise at the output, RMS.
     *
     * @return volts
     */
    public double outputVolts() {
        return outputVolts;
    }

    /**
     * Width of a rectangle that lets as much through.
     *
     * @return Hz
     */
    public double bandwidthHz() {
        return bandwidthHz;
    }
}
