package org.slugpeak.core.receiver;

import org.slugpeak.core.decibel.Decibels;

/**
 * Delayed automatic volume control: above the delay the detector's voltage lowers the gain of the controlled stages, in dB,
 * in proportion. Immutable; any thread may use it.
 *
 * @param delayVolts rise of the detector below which nothing happens; 0 or more
 * @param dbPerVolt gain lost per volt above it; 0 or more
 * @param timeConstantSeconds of the control line's filter; positive
 */
public record GainControl(double delayVolts, double dbPerVolt, double timeConstantSeconds) {

    /**
     * The control voltage that a detector voltage asks for when all has settled.
     *
     * @param detectorRiseVolts above rest; 0 or more
     * @return volts above the delay; 0 or more
     */
    public double targetVolts(double detectorRiseVolts) {
        return Math.max(0, detectorRiseVolts - delayVolts);
    }

    /**
     * The gain left at a control voltage.
     *
     * @param controlVolts above the delay; 0 or more
     * @return factor, 1 or less
     */
    public double gain(double controlVolts) {
        return Decibels.ratio(-dbPerVolt * controlVolts);
    }
}
