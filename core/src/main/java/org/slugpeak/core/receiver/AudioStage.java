package org.slugpeak.core.receiver;

/**
 * Audio amplifier and voice coil; clips symmetrically and softly. Immutable; any thread may use it.
 *
 * @param gain ratio of voltages, from detector to voice coil at the present volume setting; positive
 * @param clipVolts peak that the output stage cannot pass; positive
 * @param humVolts RMS across the voice coil without a signal; 0 or more
 */
public record AudioStage(double gain, double clipVolts, double humVolts) {

    /**
     * What is measured across the voice coil.
     *
     * @param audioPeakVolts at the detector, peak; 0 or more
     * @param extraHumVolts hum in addition, RMS; 0 or more
     * @return RMS volts, tone and hum together
     */
    public double voiceCoilVolts(double audioPeakVolts, double extraHumVolts) {
        double hum = Math.hypot(humVolts, extraHumVolts);
        return Math.hypot(clipVolts * Math.tanh(audioPeakVolts * gain / clipVolts) / Math.sqrt(2), hum);
    }

    /**
     * Whether the stage clips beyond what a tone measurement forgives (tenth part of the amplitude lost).
     *
     * @param audioPeakVolts at the detector, peak; 0 or more
     * @return true where it clips
     */
    public boolean clips(double audioPeakVolts) {
        double asked = audioPeakVolts * gain;
        return clipVolts * Math.tanh(asked / clipVolts) < 0.9 * asked;
    }
}
