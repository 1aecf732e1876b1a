package org.slugpeak.core.receiver;

/** A set on the simulated bench: what is fed and turned goes in, what a meter would see comes out. One thread at a time. */
public interface SetOnBench {

    /**
     * Advances to a time.
     *
     * @param tNanos not before the last one
     */
    void step(long tNanos);

    /**
     * How the generator stands.
     *
     * @return as last fed
     */
    Generator generator();

    /**
     * Sets the generator.
     *
     * @param newGenerator how it stands from now on
     */
    void feed(Generator newGenerator);

    /**
     * Where the pointer of the dial stands.
     *
     * @return hertz
     */
    double dialHz();

    /**
     * Sets the dial.
     *
     * @param newDialHz where the pointer stands
     */
    void tune(double newDialHz);

    /**
     * Connects a meter.
     *
     * @param ohm its input resistance; positive
     */
    void load(double ohm);

    /**
     * What stands at the point of a DC meter, unloaded.
     *
     * @return volts, with their sign
     */
    double directVolts();

    /**
     * Tone and hum across the voice coil.
     *
     * @return volts RMS; 0 or more
     */
    double voiceCoilVolts();

    /**
     * Whether the audio stage clips now.
     *
     * @return true where it clips
     */
    boolean clips();

    /**
     * Hum that rides on the direct voltage.
     *
     * @return volts, peak; 0 or more
     */
    double humVolts();
}
