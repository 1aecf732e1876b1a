package org.slugpeak.core.rehearsal;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * All circuits of a set, and what they make of a signal. One thread at a time.
 *
 * @param strips by their frequency, Hz
 * @param bands by the scenes that are played on them
 * @param traps in the aerial
 * @param knobs by their names, in the order of the plan
 */
record Circuits(
        Map<Double, IfStrip> strips,
        Map<PlannedScene, BandCircuits> bands,
        List<WaveTrap> traps,
        Map<String, Knob> knobs) {

    /** From aerial socket to converter grid in tune; usual size, made up. */
    static final double AERIAL_GAIN = 4;

    /** Beyond this ratio of frequencies nothing of a signal gets past the converter unconverted. */
    private static final double BREAKS_THROUGH = 3;

    IfStrip strip(PlannedScene scene) {
        return Objects.requireNonNull(strips.get(scene.intermediateHz()));
    }

    /** What is tuned where a scene is fed at the aerial. */
    BandCircuits band(PlannedScene scene) {
        return Objects.requireNonNull(bands.get(scene));
    }

    Knob knob(PlannedScene scene) {
        return Objects.requireNonNull(knobs.get(scene.step().adjuster()));
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
        TunedRange oscillator = band(scene).oscillator();
        double dialHz = scene.dialHz();
        for (int i = 0; i < 20; i++) {
            dialHz += scene.signalHz() + scene.side().sign() * scene.intermediateHz() - oscillator.hz(dialHz);
        }
        return dialHz;
    }

    /** What the detector sees: the signal itself at the converter's grid, the difference to the oscillator at the aerial. */
    double convertedHz(PlannedScene scene, double generatorHz, double dialHz) {
        if (!scene.atAerial() || scene.role() == Role.IF_WINDING || scene.role() == Role.DISCRIMINATOR) {
            return generatorHz;
        }
        // Below a kilohertz a strip passes nothing, and its formulas need a frequency.
        return Math.max(1e3, Math.abs(generatorHz - band(scene).oscillator().hz(dialHz)));
    }
}
