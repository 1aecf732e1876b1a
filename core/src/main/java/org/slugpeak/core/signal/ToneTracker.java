package org.slugpeak.core.signal;

/**
 * Finds the tone in 300..1100 Hz, follows it, and says when there is none.
 *
 * <p>A tone is taken up when one spectral line stands 14 dB above the noise of its own bin in two successive looks at the
 * same frequency, and is not hum; it is let go when the line has sunk to 11 dB. With white noise of constant level the first
 * happens by chance less than once an hour. A tone let go is found again as fast as a new one.
 */
final class ToneTracker {

    static final double LOWEST_HZ = 300;
    static final double HIGHEST_HZ = 1100;

    private static final double EDGE_HZ = 6;
    private static final double TAKE_UP = 25;
    private static final double HOLD = 12;
    private static final double RIVAL = 4;
    private static final int RIVAL_LOOKS = 5;
    private static final int NEWTON_STEPS = 3;

    private final double rateHz;
    private final Spectrum spectrum;
    private final Correlator level;
    private final Correlator pitch;
    private final HumTest humTest;
    private final double reachHz;

    private double candidateHz;
    private double toneHz;
    private double lastHz;
    private boolean hiddenByHum;
    private int rivalLooks;

    ToneTracker(Taper taper, double rateHz) {
        this.rateHz = rateHz;
        this.spectrum = new Spectrum(taper, rateHz);
        this.level = new Correlator(taper);
        this.pitch = new Correlator(Taper.sine(taper.length()));
        this.humTest = new HumTest(taper, rateHz);
        this.reachHz = 2 * rateHz / taper.length();
    }

    /**
     * One look.
     *
     * @param clean samples without hum
     * @param raw the same samples with hum
     * @param hum what is known of it
     */
    void look(double[] clean, double[] raw, HumModel hum) {
        spectrum.run(clean, 0);
        double strongestHz = spectrum.strongestHz(LOWEST_HZ - EDGE_HZ, HIGHEST_HZ + EDGE_HZ);
        double hz = refine(clean, tracking() && !rivalled(strongestHz) ? nearest() : strongestHz);
        boolean inBand = hz > LOWEST_HZ - EDGE_HZ && hz < HIGHEST_HZ + EDGE_HZ;
        boolean strong =
                inBand && level.power() > (tracking() ? HOLD : TAKE_UP) * spectrum.floor() && level.power() > 0;
        hiddenByHum = strong && maybeHum(raw, hz, hum);
        if (!strong || hiddenByHum) {
            toneHz = 0;
            candidateHz = 0;
            return;
        }
        if (tracking() || Math.abs(hz - candidateHz) < reachHz) {
            toneHz = hz;
            lastHz = hz;
        }
        candidateHz = hz;
    }

    boolean tracking() {
        return toneHz > 0;
    }

    /** The tone's frequency; 0 where there is none. */
    double toneHz() {
        return toneHz;
    }

    /** Where the tone was last; 0 if there never was one. */
    double lastHz() {
        return lastHz;
    }

    /** Whether something tone-like was refused because it may be hum. */
    boolean hiddenByHum() {
        return hiddenByHum;
    }

    double amplitude() {
        return level.amplitude();
    }

    /** Tone over the noise of its own bin, as a power ratio. */
    double signalToNoise() {
        return spectrum.floor() > 0 ? level.power() / spectrum.floor() : Double.POSITIVE_INFINITY;
    }

    Spectrum spectrum() {
        return spectrum;
    }

    private boolean maybeHum(double[] raw, double hz, HumModel hum) {
        return hum.ready()
                ? humTest.mayBeHum(raw, hz, level.amplitude(), hum.mainsHz())
                : humTest.overwhelmed(raw, level.amplitude());
    }

    private double nearest() {
        return spectrum.strongestHz(toneHz - reachHz, toneHz + reachHz);
    }

    private boolean rivalled(double strongestHz) {
        boolean rival = Math.abs(strongestHz - toneHz) > reachHz
                && spectrum.powerAt(strongestHz) > RIVAL * spectrum.powerAt(toneHz);
        rivalLooks = rival ? rivalLooks + 1 : 0;
        return rivalLooks >= RIVAL_LOOKS;
    }

    private double refine(double[] clean, double startHz) {
        double omega = pitch.follow(clean, 0, 2 * Math.PI * startHz / rateHz, NEWTON_STEPS);
        level.run(clean, 0, omega);
        return omega * rateHz / (2 * Math.PI);
    }
}
