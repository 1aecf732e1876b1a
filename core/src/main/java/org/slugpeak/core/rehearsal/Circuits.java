package org.slugpeak.core.rehearsal;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * All circuits of a set, and what they make of a signal. One thread at a time.
 *
 * @param strips by the scenes whose signal goes through them
 * @param bands by the scenes that are played on them
 * @param traps in the aerial
 * @param searches for a crystal, by the intermediate frequency that it is near, Hz
 * @param beats beat oscillators by the intermediate frequency that they are heard with, Hz
 * @param knobs by their names, in the order of the plan
 */
record Circuits(
        Map<PlannedScene, IfStrip> strips,
        Map<PlannedScene, BandCircuits> bands,
        List<WaveTrap> traps,
        Map<Double, CrystalSearch> searches,
        Map<Double, BeatOscillator> beats,
        Map<String, Knob> knobs) {

    /** From aerial socket to converter grid in tune; usual size, made up. */
    static final double AERIAL_GAIN = 4;

    /** Beyond this ratio of frequencies nothing of a signal gets past the converter unconverted. */
    private static final double BREAKS_THROUGH = 3;

    /** So near nobody sees a difference. */
    private static final double ON_SIGNAL_HZ = 0.1;

    private static final int MOST_NEARER = 20;

    IfStrip strip(PlannedScene scene) {
        return Objects.requireNonNull(strips.get(scene));
    }

    /** What is tuned where a scene is fed at the aerial. */
    BandCircuits band(PlannedScene scene) {
        return Objects.requireNonNull(bands.get(scene));
    }

    Knob knob(PlannedScene scene) {
        return Objects.requireNonNull(knobs.get(scene.step().adjuster()));
    }

    /** What the generator gives for a scene: where the crystal was found, if the plan wants that and has looked for it. */
    double fedHz(PlannedScene scene) {
        boolean measured = scene.step().setup().particulars().generatorMeasured();
        return Optional.ofNullable(searches.get(scene.intermediateHz()))
                .filter(any -> measured || scene.role() == Role.CRYSTAL)
                .map(CrystalSearch::fedHz)
                .orElse(scene.signalHz());
    }

    /** The note that a carrier is heard as. */
    double beatHz(PlannedScene scene, double carrierHz) {
        return Objects.requireNonNull(beats.get(scene.intermediateHz())).beatHz(carrierHz);
    }

    /** Which signal the strip gets for one at the generator: 1 for one at the converter's grid with everything in tune. */
    double response(PlannedScene scene, double generatorHz, double dialHz) {
        IfStrip strip = strip(scene);
        if (!scene.atAerial()) {
            return strip.response(generatorHz);
        }
        double aerial = AERIAL_GAIN;
        for (WaveTrap each : traps) {
            aerial *= each.response(generatorHz);
        }
        aerial *= band(scene).response(generatorHz, dialHz);
        double arrivesHz = convertedHz(scene, generatorHz, dialHz);
        double converted = arrivesHz == generatorHz ? 0 : strip.response(arrivesHz);
        boolean near = Math.abs(Math.log(generatorHz / strip.centreHz())) < Math.log(BREAKS_THROUGH);
        double straight = near ? strip.response(generatorHz) : 0;
        return aerial * Math.hypot(converted, straight);
    }

    /** Where on the dial the oscillator is right for a scene's signal: nearer with every step, as the dial is nearly true. */
    double rightDialHz(PlannedScene scene) {
        return rightDialHz(scene, scene.signalHz(), scene.dialHz());
    }

    /** The same for another signal on the scene's band, looked for from near a place of the dial. */
    double rightDialHz(PlannedScene scene, double signalHz, double nearDialHz) {
        BandCircuits band = band(scene);
        double wantedHz = signalHz + scene.side().sign() * scene.intermediateHz();
        double dialHz = nearDialHz;
        for (int i = 0; i < MOST_NEARER; i++) {
            double nearerHz = wantedHz - band.oscillatorHz(dialHz);
            dialHz += nearerHz;
            if (Math.abs(nearerHz) < ON_SIGNAL_HZ) {
                break;
            }
        }
        return dialHz;
    }

    /** What the detector sees: the signal itself at the converter's grid, the difference to the oscillator at the aerial. */
    double convertedHz(PlannedScene scene, double generatorHz, double dialHz) {
        if (!scene.atAerial() || scene.role().isAfterConverter()) {
            return generatorHz;
        }
        return converted(generatorHz, band(scene).oscillatorHz(dialHz));
    }

    /** The difference; below a kilohertz a strip passes nothing, and its formulas need a frequency. */
    static double converted(double hz, double oscillatorHz) {
        return Math.max(1e3, Math.abs(hz - oscillatorHz));
    }
}
