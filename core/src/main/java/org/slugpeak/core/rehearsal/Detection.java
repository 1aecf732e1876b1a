package org.slugpeak.core.rehearsal;

import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.receiver.AudioStage;
import org.slugpeak.core.receiver.DiodeDetector;
import org.slugpeak.core.receiver.Discriminator;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.Limiter;
import org.slugpeak.core.receiver.LimiterCurve;
import org.slugpeak.core.receiver.ThermionicDiode;
import org.slugpeak.core.receiver.ValveStage;

/**
 * What the points of a set show for a signal at the end of its strip. All figures are of usual size and made up where nothing else
 * is said. Immutable; any thread may use it.
 */
final class Detection {

    /** Peak volts at the detector for a volt at the converter's grid: 60 uV for a rise of one volt, about. */
    static final double GAIN = 25e3;

    /** No stage gives more than its supply lets it, until the gain control has come. */
    private static final double MOST_PEAK_VOLTS = 100;

    private static final double LOAD_OHM = 470e3;

    /** Diode, load and rest are those of the demonstration set. */
    private static final EnvelopeDetector DIODE =
            EnvelopeDetector.of(new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));

    /** Of a critical pair of Q 60 with 47 pF at 10.7 MHz, in tune: {@code Q/(2 w C)}. */
    private static final double WINDING_OHM = 9.5e3;

    /** Diode, leak and valve are those of the reference table of limiters. */
    private static final LimiterCurve LIMITER = LimiterCurve.of(new Limiter(
            new DiodeDetector(ThermionicDiode.resting(1100, 1e-4, 0.4, 47e3), 47e3, WINDING_OHM),
            new ValveStage(3e-3, 0.4, 2.5, Double.POSITIVE_INFINITY),
            true));

    private static final double MODULATION = 0.3;

    /** Volume so that the detector's usual volt is heard as half a volt. */
    private static final AudioStage AUDIO = new AudioStage(2, 3.2, 3e-3);

    /** What of noise the amplifier lets through to the voice coil. */
    private static final double AUDIO_HZ = 4000;

    /** Four periods of the tone: over less there is no RMS of it. */
    private static final double LEAST_SECONDS = 0.01;

    private Detection() {}

    /** At the detector for a signal at the converter's grid, V RMS, and what gain control leaves, a ratio. */
    static double peakVolts(double gridVolts, double gain) {
        return Math.min(MOST_PEAK_VOLTS, gridVolts * Math.sqrt(2) * GAIN * gain);
    }

    static double riseVolts(double peakVolts) {
        return DIODE.riseVolts(peakVolts);
    }

    /** What a limiter's grid shows, above its rest. */
    static double gridVolts(double peakVolts) {
        return LIMITER.grid().riseVolts(peakVolts);
    }

    /** The carrier for a wanted reading above rest, peak volts. */
    static double peakVoltsFor(PlannedScene scene, double volts) {
        return switch (scene.point()) {
            case DETECTOR, AVC -> DIODE.carrierPeakVolts(volts);
            case LIMITER_GRID -> LIMITER.grid().carrierPeakVolts(volts);
            case VOICE_COIL -> {
                double audioVolts = audioPeakVoltsFor(volts);
                yield scene.role() == Role.BEAT_OSCILLATOR
                        ? audioVolts
                        : DIODE.carrierPeakVolts(audioVolts / MODULATION);
            }
            case RATIO_DETECTOR, DISCRIMINATOR -> volts;
        };
    }

    /** The tone at the detector for a wanted reading at the voice coil, where its stage does not limit. */
    static double audioPeakVoltsFor(double volts) {
        return volts * Math.sqrt(2) / AUDIO.gain();
    }

    /**
     * What a DC meter sees.
     *
     * @param rise that a detector or a limiter's grid gives for the carrier and its noise
     * @param peakVolts of the carrier with its noise
     * @param limited whether the set has a limiter before its detector
     */
    static double directVolts(
            MeterPoint point, double rise, double peakVolts, Discriminator.Halves halves, boolean limited) {
        return switch (point) {
            case DETECTOR, AVC, VOICE_COIL -> -DIODE.restVolts() - rise;
            case LIMITER_GRID -> -LIMITER.grid().restVolts() - rise;
            case RATIO_DETECTOR -> drive(peakVolts, limited) * halves.half();
            case DISCRIMINATOR -> drive(peakVolts, limited) * halves.difference();
        };
    }

    /** What a limiter leaves of a signal; without one all of it. */
    private static double drive(double peakVolts, boolean limited) {
        return limited ? LIMITER.outputAmpere(peakVolts) * WINDING_OHM : peakVolts;
    }

    /**
     * What an AC meter sees: the tone, with hum and noise added as power.
     *
     * @param noiseVolts across the voice coil, RMS
     */
    static double voiceCoilVolts(double audioPeakVolts, double noiseVolts) {
        return AUDIO.voiceCoilVolts(audioPeakVolts, noiseVolts);
    }

    /**
     * What of the detector's noise comes to the voice coil.
     *
     * @param noiseVolts of the detector, RMS
     * @param bandwidthHz of the noise before it
     */
    static double voiceCoilNoiseVolts(double noiseVolts, double bandwidthHz) {
        double share = Math.min(1, AUDIO_HZ / (bandwidthHz / 2));
        return noiseVolts * Math.sqrt(share) * AUDIO.gain();
    }

    /**
     * How much of what an AC meter sees scatters, where it takes its mean over so many seconds: noise in a band B has {@code 2 B t}
     * independent values, so its power scatters by {@code n^4/(B t)}, and its product with a tone by {@code 2 V^2 n^2/(B t)} (Rice,
     * Mathematical Analysis of Random Noise, 1944/45, from memory).
     *
     * @return V RMS, one standard deviation
     */
    static double scatterVolts(double allVolts, double noiseVolts, double seconds) {
        double square = noiseVolts * noiseVolts;
        double toneSquare = Math.max(0, allVolts * allVolts - square);
        double values = AUDIO_HZ * Math.max(LEAST_SECONDS, seconds);
        return allVolts == 0 ? 0 : Math.sqrt(square * (square + 2 * toneSquare) / values) / (2 * allVolts);
    }

    static boolean clips(double audioPeakVolts) {
        return AUDIO.clips(audioPeakVolts);
    }

    /** A modulated carrier as sound, at the detector. */
    static double audioPeakVolts(double peakVolts) {
        return DIODE.audioPeakVolts(peakVolts, MODULATION);
    }

    /** A carrier as the note that it makes with a beat oscillator, at the detector. */
    static double notePeakVolts(double peakVolts, double beatHz) {
        double depth = Math.min(1, peakVolts / BeatOscillator.VOLTS);
        return Math.max(0, DIODE.audioPeakVolts(BeatOscillator.VOLTS, depth)) * BeatOscillator.heard(beatHz);
    }
}
