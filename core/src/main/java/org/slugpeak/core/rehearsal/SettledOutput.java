package org.slugpeak.core.rehearsal;

import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.receiver.GainControl;
import org.slugpeak.core.receiver.NoiseBand;
import org.slugpeak.core.receiver.NoisyCarrier;

/**
 * What a set gives at its voice coil when gain control and noise have settled, worked out from the circuits and apart from any reading:
 * what a sheet is held against. Roots by Brent's method of Commons Math. One thread at a time.
 */
public final class SettledOutput {

    /** So long a mean has no scatter left. */
    private static final double FOR_EVER_SECONDS = 1e15;

    private static final double MOST_CONTROL_VOLTS = 100;
    private static final double LEAST_DB = -180;
    private static final double MOST_DB = 80;
    private static final int MOST_CALLS = 200;
    private static final double ACCURACY = 1e-7;

    private final Circuits circuits;
    private final PlannedScene scene;
    private final NoiseBand band;
    private final GainControl control;
    private final double volume;
    private final NoisyCarrier detector = new NoisyCarrier(Detection::riseVolts, new SplittableRandom(1));

    SettledOutput(Circuits circuits, PlannedScene scene, NoiseBand band, GainControl control, double volume) {
        this.circuits = circuits;
        this.scene = scene;
        this.band = band;
        this.control = control;
        this.volume = volume;
    }

    /**
     * The voice coil's voltage at the volume that is set.
     *
     * @param hz of the generator, Hz
     * @param emfVolts of the generator, V
     * @param modulated whether it is modulated
     * @param dialHz where the pointer stands, Hz
     * @return V RMS, with hum and noise
     */
    public double voiceCoilVolts(double hz, double emfVolts, boolean modulated, double dialHz) {
        double grid = emfVolts * circuits.response(scene, hz, dialHz);
        double controlVolts = new BrentSolver(ACCURACY)
                .solve(MOST_CALLS, it -> control.targetVolts(riseVolts(grid, it)) - it, 0, MOST_CONTROL_VOLTS);
        riseVolts(grid, controlVolts);
        double noise = Detection.voiceCoilNoiseVolts(detector.noiseVolts(), band.bandwidthHz());
        double audio = modulated ? Detection.audioPeakVolts(Detection.peakVolts(grid, control.gain(controlVolts))) : 0;
        return Detection.voiceCoilVolts(volume * audio, volume * noise);
    }

    private double riseVolts(double gridVolts, double controlVolts) {
        double gain = control.gain(controlVolts);
        return detector.volts(
                Detection.peakVolts(gridVolts, gain), band.outputVolts() * gain, band.bandwidthHz(), FOR_EVER_SECONDS);
    }

    /**
     * The input for an output.
     *
     * @param hz of the generator, Hz
     * @param volts at the voice coil, V RMS
     * @param dialHz where the pointer stands, Hz
     * @return V EMF
     */
    public double emfVolts(double hz, double volts, double dialHz) {
        return Decibels.ratio(new BrentSolver(ACCURACY)
                .solve(
                        MOST_CALLS,
                        db -> voiceCoilVolts(hz, Decibels.ratio(db), true, dialHz) - volts,
                        LEAST_DB,
                        MOST_DB));
    }

    /**
     * Signal with noise over noise.
     *
     * @param hz of the generator, Hz
     * @param emfVolts of the generator, V
     * @param dialHz where the pointer stands, Hz
     * @return dB
     */
    public double signalToNoiseDb(double hz, double emfVolts, double dialHz) {
        return Decibels.of(voiceCoilVolts(hz, emfVolts, true, dialHz) / voiceCoilVolts(hz, emfVolts, false, dialHz));
    }

    /**
     * The greatest response near a frequency.
     *
     * @param nearHz where it is looked for, Hz
     * @param dialHz where the pointer stands, Hz
     * @return Hz
     */
    public double topHz(double nearHz, double dialHz) {
        return new Truth(circuits).topHz(scene, nearHz, dialHz);
    }
}
