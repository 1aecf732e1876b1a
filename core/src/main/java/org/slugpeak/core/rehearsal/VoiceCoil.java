package org.slugpeak.core.rehearsal;

import java.util.SplittableRandom;

/** What is heard of a set, at the present volume. One thread at a time. */
final class VoiceCoil {

    private final SplittableRandom random;
    private double volume = 1;
    private boolean scatters;

    VoiceCoil(SplittableRandom random) {
        this.random = random;
    }

    /** From now on a meter takes the RMS of everything, which scatters; one that follows the tone alone averages that away. */
    void hearEverything() {
        scatters = true;
    }

    void turnUp() {
        volume = 1;
    }

    /** Turns the volume until so much is heard of a tone; where the stage does not limit that is as much less of it. */
    void turnTo(double volts, double audioPeakVolts) {
        volume = Math.min(1, Detection.audioPeakVoltsFor(volts) / audioPeakVolts);
    }

    double volume() {
        return volume;
    }

    boolean clips(double audioPeakVolts) {
        return Detection.clips(volume * audioPeakVolts);
    }

    /**
     * What an AC meter sees in a moment.
     *
     * @param noiseVolts of the detector, RMS
     * @param bandwidthHz of the noise before it
     */
    double volts(double audioPeakVolts, double noiseVolts, double bandwidthHz, double seconds) {
        double noise = volume * Detection.voiceCoilNoiseVolts(noiseVolts, bandwidthHz);
        double all = Detection.voiceCoilVolts(volume * audioPeakVolts, noise);
        double scatter = scatters ? Detection.scatterVolts(all, noise, seconds) : 0;
        return Math.abs(all + scatter * random.nextGaussian());
    }
}
