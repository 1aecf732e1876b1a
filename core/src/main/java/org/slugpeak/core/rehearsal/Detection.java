package org.slugpeak.core.rehearsal;

import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.receiver.AudioStage;
import org.slugpeak.core.receiver.DiodeDetector;
import org.slugpeak.core.receiver.Discriminator;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.ThermionicDiode;

/**
 * What the points of a set show for a signal at the end of its strip. All figures are of usual size and made up where nothing else
 * is said. Immutable; any thread may use it.
 */
final class Detection {

    private static final double LOAD_OHM = 470e3;

    /** Diode, load and rest are those of the demonstration set. */
    private static final EnvelopeDetector DIODE =
            EnvelopeDetector.of(new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));

    /** Grid leak of a limiter without a signal, from memory. */
    private static final double GRID_REST_VOLTS = 0.4;

    private static final double MODULATION = 0.3;

    private static final AudioStage AUDIO = new AudioStage(4, 3.2, 3e-3);

    /** Peak volts that a limiter passes on at the most. */
    private static final double LIMITED_VOLTS = 3;

    private Detection() {}

    static double riseVolts(double peakVolts) {
        return DIODE.riseVolts(peakVolts);
    }

    /** The carrier for a wanted reading above rest, peak volts. */
    static double peakVoltsFor(MeterPoint point, double volts) {
        return switch (point) {
            case DETECTOR, AVC, LIMITER_GRID -> DIODE.carrierPeakVolts(volts);
            case VOICE_COIL -> DIODE.carrierPeakVolts(volts * Math.sqrt(2) / AUDIO.gain() / MODULATION);
            case RATIO_DETECTOR, DISCRIMINATOR -> volts;
        };
    }

    /**
     * What a DC meter sees.
     *
     * @param rise that a detector gives for the carrier and its noise
     * @param peakVolts of the carrier with its noise
     * @param limited whether the set has a limiter before its detector
     */
    static double directVolts(
            MeterPoint point, double rise, double peakVolts, Discriminator.Halves halves, boolean limited) {
        return switch (point) {
            case DETECTOR, AVC, VOICE_COIL -> -DIODE.restVolts() - rise;
            case LIMITER_GRID -> -GRID_REST_VOLTS - rise;
            case RATIO_DETECTOR -> drive(peakVolts, limited) * halves.half();
            case DISCRIMINATOR -> drive(peakVolts, limited) * halves.difference();
        };
    }

    /** What a limiter leaves of a signal; without one all of it. */
    private static double drive(double peakVolts, boolean limited) {
        return limited ? LIMITED_VOLTS * Math.tanh(peakVolts / LIMITED_VOLTS) : peakVolts;
    }

    static double voiceCoilVolts(double audioPeakVolts) {
        return AUDIO.voiceCoilVolts(audioPeakVolts, 0);
    }

    static boolean clips(double audioPeakVolts) {
        return AUDIO.clips(audioPeakVolts);
    }

    static double audioPeakVolts(double peakVolts) {
        return DIODE.audioPeakVolts(peakVolts, MODULATION);
    }
}
