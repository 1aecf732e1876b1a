package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.slugpeak.core.plan.Plan;

/** Makes the circuits that a plan speaks of. */
final class CircuitBuilder {

    /** Crystals of one marking differ by some hundred hertz: that much this one lies above its marking. Made up. */
    private static final double CRYSTAL_OFF_HZ = 350;

    private final Plan plan;
    private final List<PlannedScene> scenes;
    private final double kappa;
    private final Map<String, Knob> knobs = new LinkedHashMap<>();
    private final Map<Double, CrystalSearch> searches = new HashMap<>();
    private final Map<Double, CrystalFilter> filters = new HashMap<>();
    private final Map<Double, BeatOscillator> beats = new HashMap<>();

    CircuitBuilder(Plan plan, List<PlannedScene> scenes, double kappa) {
        this.kappa = kappa;
        this.plan = plan;
        this.scenes = scenes;
    }

    Circuits build() {
        NavigableMap<Double, IfStrip> strips = new TreeMap<>();
        // A second conversion needs the amplifier behind it, which is the lower one.
        plan.intermediatesHz().stream().sorted().forEach(hz -> addAt(hz, strips));
        Map<PlannedScene, BandCircuits> bands = new BandBuilder(plan, scenes, strips, knobs).build();
        Map<PlannedScene, IfStrip> ways = new HashMap<>();
        scenes.forEach(scene -> ways.put(scene, way(scene, strips)));
        return new Circuits(ways, bands, traps(), searches, beats, knobs);
    }

    private void addAt(double hz, NavigableMap<Double, IfStrip> strips) {
        List<PlannedScene> own =
                scenes.stream().filter(scene -> scene.intermediateHz() == hz).toList();
        IfStrip strip = new StripBuilder(hz, own, knobs, kappa).build();
        Optional<String> second = named(own, Role.SECOND_OSCILLATOR);
        strips.put(
                hz, second.map(name -> strip.with(conversion(name, hz, strips))).orElse(strip));
        Optional<String> search = named(own, Role.CRYSTAL);
        double crystalHz = search.isPresent() ? hz + CRYSTAL_OFF_HZ : hz;
        search.ifPresent(name -> searches.put(hz, new CrystalSearch(crystalHz, keep(Parts.generator(name)))));
        if (search.isPresent() || named(own, Role.CRYSTAL_LOAD).isPresent()) {
            String load = named(own, Role.CRYSTAL_LOAD).orElse("");
            Knob knob = Parts.crystalLoad(load);
            filters.put(hz, new CrystalFilter(crystalHz, load.isEmpty() ? knob : keep(knob)));
        }
        named(own, Role.BEAT_OSCILLATOR)
                .ifPresent(name -> beats.put(
                        hz, new BeatOscillator(crystalHz, keep(Parts.pitch(name, 2 * BeatOscillator.LOW_HZ / hz)))));
    }

    private SecondConversion conversion(String name, double hz, NavigableMap<Double, IfStrip> strips) {
        Map.Entry<Double, IfStrip> lower = strips.lowerEntry(hz);
        double oscillatorHz = hz + lower.getKey();
        double width = lower.getValue().widthHz() / oscillatorHz;
        return new SecondConversion(oscillatorHz, keep(Parts.oscillatorCoil(name, width)), lower.getValue());
    }

    private static Optional<String> named(List<PlannedScene> own, Role role) {
        return own.stream()
                .filter(scene -> scene.role() == role)
                .map(scene -> scene.step().adjuster())
                .findFirst();
    }

    private Knob keep(Knob knob) {
        knobs.put(knob.name(), knob);
        return knob;
    }

    private IfStrip way(PlannedScene scene, Map<Double, IfStrip> strips) {
        IfStrip strip = Objects.requireNonNull(strips.get(scene.intermediateHz()));
        return scene.role().isThroughCrystal()
                ? strip.with(Objects.requireNonNull(filters.get(scene.intermediateHz())))
                : strip;
    }

    private List<WaveTrap> traps() {
        List<WaveTrap> traps = new ArrayList<>();
        for (PlannedScene scene : scenes) {
            String name = scene.step().adjuster();
            if (scene.role() == Role.TRAP && !knobs.containsKey(name)) {
                traps.add(new WaveTrap(scene.signalHz(), keep(Parts.core(name, WaveTrap.Q))));
            }
        }
        return traps;
    }
}
