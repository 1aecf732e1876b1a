package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slugpeak.core.plan.Plan;

/** Makes the circuits that a plan speaks of. */
final class CircuitBuilder {

    private final Plan plan;
    private final List<PlannedScene> scenes;
    private final double kappa;
    private final Map<String, Knob> knobs = new LinkedHashMap<>();

    CircuitBuilder(Plan plan, List<PlannedScene> scenes, double kappa) {
        this.kappa = kappa;
        this.plan = plan;
        this.scenes = scenes;
    }

    Circuits build() {
        Map<Double, IfStrip> strips = new HashMap<>();
        for (double hz : plan.intermediatesHz()) {
            List<PlannedScene> own = scenes.stream()
                    .filter(scene -> scene.intermediateHz() == hz)
                    .toList();
            strips.put(hz, new StripBuilder(hz, own, knobs, kappa).build());
        }
        Map<PlannedScene, BandCircuits> bands = new BandBuilder(plan, scenes, strips, knobs).build();
        List<WaveTrap> traps = new ArrayList<>();
        for (PlannedScene scene : scenes) {
            String name = scene.step().adjuster();
            if (scene.role() == Role.TRAP && !knobs.containsKey(name)) {
                Knob core = Parts.core(name, WaveTrap.Q);
                knobs.put(name, core);
                traps.add(new WaveTrap(scene.signalHz(), core));
            }
        }
        return new Circuits(strips, bands, traps, knobs);
    }
}
