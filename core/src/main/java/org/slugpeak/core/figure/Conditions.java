package org.slugpeak.core.figure;

/**
 * What a sheet was measured under. Immutable; any thread may use it.
 *
 * @param occasion before or after the work
 * @param referenceVolts the reading for which inputs are sought, V
 * @param loadOhms what it stands across, ohm; NaN at a detector
 * @param aerial what lies between generator and set, as the plan has it; empty where it says nothing
 * @param attenuatorDb how far the generator's level may be off, dB; NaN where nobody said
 */
public record Conditions(
        Occasion occasion, double referenceVolts, double loadOhms, String aerial, double attenuatorDb) {

    /**
     * Whether the output is read as power.
     *
     * @return false at a detector
     */
    public boolean isPower() {
        return !Double.isNaN(loadOhms);
    }

    /**
     * What the attenuator may add to a level.
     *
     * @return dB; 0 where nobody said
     */
    public double knownAttenuatorDb() {
        return Double.isNaN(attenuatorDb) ? 0 : attenuatorDb;
    }
}
