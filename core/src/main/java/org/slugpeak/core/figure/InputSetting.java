package org.slugpeak.core.figure;

/**
 * How the generator is to be set for one reading of a sheet. Immutable; any thread may use it.
 *
 * @param frequencyHz Hz
 * @param emfVolts level, volts EMF, RMS
 * @param modulated whether the carrier is modulated, 400 Hz and 30 %
 * @param dialHz where the set is tuned, Hz
 * @param handwork what else a person does
 * @param referenceVolts reading that is aimed at, V
 */
public record InputSetting(
        double frequencyHz,
        double emfVolts,
        boolean modulated,
        double dialHz,
        Handwork handwork,
        double referenceVolts) {

    /**
     * With other handwork.
     *
     * @param other what a person does
     * @return a copy
     */
    public InputSetting with(Handwork other) {
        return new InputSetting(frequencyHz, emfVolts, modulated, dialHz, other, referenceVolts);
    }

    /**
     * As the generator really stands.
     *
     * @param realHz what it gives, Hz
     * @param realEmfVolts its level, volts EMF; NaN where that is not known
     * @return a copy
     */
    public InputSetting standingAt(double realHz, double realEmfVolts) {
        double level = Double.isNaN(realEmfVolts) ? emfVolts : realEmfVolts;
        return new InputSetting(realHz, level, modulated, dialHz, handwork, referenceVolts);
    }
}
