package org.slugpeak.core.rehearsal;

/**
 * The oscillator that makes a carrier heard as the difference to it. The detector's envelope follows the weaker of the two, so the
 * note is as strong as the carrier; what it loses on its way to the voice coil is made up, of usual size. One thread at a time.
 *
 * @param zeroHz where it oscillates in its working position
 * @param pitch coil that tunes it
 */
record BeatOscillator(double zeroHz, Knob pitch) {

    /** What it leaves at the detector, peak volts: more than the carriers that it is heard with. */
    static final double VOLTS = 2;

    /** Coupling capacitor and output transformer, a pole each. */
    static final double LOW_HZ = 60;

    /** What the amplifier passes at the other end. */
    private static final double HIGH_HZ = 4000;

    /** How far off a carrier it oscillates: the note. */
    double beatHz(double carrierHz) {
        return Math.abs(carrierHz - zeroHz / Math.sqrt(1 + pitch.effect()));
    }

    /** What is left of a note at the voice coil, 1 in the middle of the range. */
    static double heard(double beatHz) {
        double low = beatHz / Math.hypot(beatHz, LOW_HZ);
        return low * low * HIGH_HZ / Math.hypot(beatHz, HIGH_HZ);
    }
}
