package org.slugpeak.core.generator;

/**
 * How a generator is to be set, or stands. Immutable; any thread may use it.
 *
 * @param frequencyHz Hz, positive
 * @param emfVolts its level, volts EMF, RMS, positive; NaN where only a hand can set it
 * @param modulation of the carrier
 * @param on whether there is a signal at its terminals
 */
public record GeneratorSetting(double frequencyHz, double emfVolts, Modulation modulation, boolean on) {

    /** A level to begin with, volts EMF: little for any set, and heard by most. Common practice, no source. */
    public static final double START_EMF_VOLTS = 30e-6;

    /**
     * On another frequency.
     *
     * @param hz Hz, positive
     * @return a copy
     */
    public GeneratorSetting withFrequency(double hz) {
        return new GeneratorSetting(hz, emfVolts, modulation, on);
    }

    /**
     * At another level.
     *
     * @param volts volts EMF, RMS, positive
     * @return a copy
     */
    public GeneratorSetting withEmf(double volts) {
        return new GeneratorSetting(frequencyHz, volts, modulation, on);
    }

    /**
     * With another modulation.
     *
     * @param wanted of the carrier
     * @return a copy
     */
    public GeneratorSetting withModulation(Modulation wanted) {
        return new GeneratorSetting(frequencyHz, emfVolts, wanted, on);
    }

    /**
     * With a signal or without.
     *
     * @param wanted whether there is one
     * @return a copy
     */
    public GeneratorSetting switched(boolean wanted) {
        return new GeneratorSetting(frequencyHz, emfVolts, modulation, wanted);
    }
}
