package org.slugpeak.core.figure;

/**
 * The arithmetic of a receiver's figures. Definitions after IRE Standards on Radio Receivers (1948) and IEC 60315-3, both from memory; the
 * rest is the decibel. All methods are pure; any thread may use them.
 */
public final class ReceiverFigures {

    /** Over so many decibels the gain control is followed. IRE 1948: from 0.1 V down, from memory. */
    public static final double AVC_SPAN_DB = 80;

    /** The output has fallen by so much where the figure of the gain control is read, dB (from memory). */
    public static final double AVC_FALL_DB = 10;

    /** The strongest input of a test, volts EMF (IRE 1948, local signal 0.1 V; from memory). */
    public static final double STRONGEST_EMF_VOLTS = 0.1;

    /** The ratio of signal with noise to noise that an input is given for, dB (from memory). */
    public static final double WANTED_RATIO_DB = 10;

    private ReceiverFigures() {}

    /**
     * Signal with noise over noise: {@code 20 lg(V1 / V2)}, the tone on against off with the carrier left on. Both readings are RMS of
     * everything, so hum counts as noise.
     *
     * @param with reading with the modulation on
     * @param without reading with it off
     * @return dB
     */
    public static double signalToNoiseDb(OutputReading with, OutputReading without) {
        return with.levelDb() - without.levelDb();
    }
}
