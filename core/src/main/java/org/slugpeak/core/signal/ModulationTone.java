package org.slugpeak.core.signal;

/**
 * The modulation tone next to the usual 400 Hz that hum of the mains disturbs least. The level window (Hann, 100 ms) takes a line
 * at 20 or 30 Hz from the tone down to nothing but what the drift of the mains leaves, and one at 10 Hz by 6 dB only. Half-wave
 * hum has every harmonic of the mains, full-wave hum the even ones; so the tone stands clear of all of them: 430 Hz between 400
 * and 450, 390 Hz between 360 and 420. 430 Hz is no good at 60 Hz, since 420 is a harmonic there. All methods are pure.
 */
public final class ModulationTone {

    /** Two bins of the level window of 100 ms: the nearest at which a line is taken out. */
    static final double CLEAR_HZ = 20;

    private static final double BETWEEN_50_AND_60_HZ = 55;
    private static final double AT_50_HZ = 430;
    private static final double AT_60_HZ = 390;

    private ModulationTone() {}

    /**
     * The tone.
     *
     * @param mainsHz frequency of the mains, 50 or 60 and what it drifts
     * @return Hz
     */
    public static double clearOf(double mainsHz) {
        return mainsHz < BETWEEN_50_AND_60_HZ ? AT_50_HZ : AT_60_HZ;
    }
}
