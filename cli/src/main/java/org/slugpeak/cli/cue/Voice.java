package org.slugpeak.cli.cue;

/**
 * One steady tone that can change pitch and be let through in several ways without a click: its phase never jumps, its pitch
 * glides and its level ramps. One thread at a time.
 */
final class Voice {

    /** A change of pitch is two thirds done after this; short beside the 50 ms between readings. */
    private static final double GLIDE_SECONDS = 0.015;

    private final double framesPerSecond;
    private final double glide;
    private final Ramp ramp;

    private double octaves;
    private double goalOctaves;
    private double phase;
    private Gate gate = Gate.SHUT;
    private long gatedFrames;

    Voice(double framesPerSecond) {
        this.framesPerSecond = framesPerSecond;
        glide = 1 - Math.exp(-1 / (GLIDE_SECONDS * framesPerSecond));
        ramp = new Ramp(framesPerSecond);
    }

    void aim(double hertz, Gate newGate) {
        goalOctaves = Math.log(hertz) / Math.log(2);
        if (ramp.isSilent()) {
            octaves = goalOctaves;
        }
        if (newGate != gate) {
            gate = newGate;
            gatedFrames = 0;
        }
    }

    double next() {
        octaves += glide * (goalOctaves - octaves);
        phase = (phase + 2 * Math.PI * Math.pow(2, octaves) / framesPerSecond) % (2 * Math.PI);
        double level = ramp.towards(gate.isOpenAt(gatedFrames++ / framesPerSecond) ? 1 : 0);
        return level * Math.sin(phase);
    }
}
