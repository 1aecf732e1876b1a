package org.slugpeak.core.receiver;

/**
 * How the signal generator stands. Immutable; any thread may use it.
 *
 * @param frequencyHz positive
 * @param volts at its terminals, RMS; 0 when off
 * @param modulated 30 % with 400 Hz
 * @param lead where its lead goes
 */
public record Generator(double frequencyHz, double volts, boolean modulated, Lead lead) {

    /** Where the generator's lead goes. */
    public enum Lead {
        /** Converter grid, through a capacitor. */
        CONVERTER_GRID,
        /** Aerial socket, through the dummy aerial. */
        AERIAL
    }

    /**
     * Its output changed by a factor.
     *
     * @param factor 0 or more
     * @return the generator after it
     */
    public Generator times(double factor) {
        return new Generator(frequencyHz, volts * factor, modulated, lead);
    }

    /**
     * With another output.
     *
     * @param newVolts RMS; 0 or more
     * @return the generator after it
     */
    public Generator withVolts(double newVolts) {
        return new Generator(frequencyHz, newVolts, modulated, lead);
    }

    /**
     * On another frequency.
     *
     * @param newHz positive
     * @return the generator after it
     */
    public Generator withFrequency(double newHz) {
        return new Generator(newHz, volts, modulated, lead);
    }
}
