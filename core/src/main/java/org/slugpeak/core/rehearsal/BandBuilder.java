package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Plan;

/** Makes what is tuned over the ranges of a set. All part values are of usual size and made up. */
final class BandBuilder {

    private static final double OSCILLATOR_FARAD = 60e-12;
    private static final double SIGNAL_FARAD = 50e-12;
    private static final double VHF_FARAD = 20e-12;

    /** Strays and space charge of a converter, and of a mixer with an oscillator of its own: between 0.2 and 2 pF, from memory. */
    private static final double CONVERTER_COUPLING_FARAD = 1e-12;

    private static final double VHF_COUPLING_FARAD = 0.2e-12;

    /** A padder is so much larger than what it stands in series with at the low end. */
    private static final double PADDER = 1.5;

    /** How far a dial is off at the worst; nearer than half the way to the image in any case. */
    private static final double DIAL_OFF = 0.025;

    /** The same of a range of very high frequency. */
    private static final double VHF_DIAL_OFF = 0.01;

    private static final double IMAGE_SHARE = 0.25;

    /** How far a signal circuit is off at the worst. */
    private static final double SIGNAL_OFF = 0.02;

    /** Parts reach so many times farther than they are off. */
    private static final double REACH = 2;

    /** A range that a plan does not name reaches so much farther than its points. */
    private static final double MARGIN = 1.1;

    private final Plan plan;
    private final List<PlannedScene> scenes;
    private final Map<Double, IfStrip> strips;
    private final Map<String, Knob> knobs;

    BandBuilder(Plan plan, List<PlannedScene> scenes, Map<Double, IfStrip> strips, Map<String, Knob> knobs) {
        this.plan = plan;
        this.scenes = scenes;
        this.strips = strips;
        this.knobs = knobs;
    }

    Map<PlannedScene, BandCircuits> build() {
        Map<Band, List<PlannedScene>> byBand = scenes.stream()
                .filter(PlannedScene::atAerial)
                .collect(Collectors.groupingBy(this::band, LinkedHashMap::new, Collectors.toList()));
        Map<PlannedScene, BandCircuits> circuits = new HashMap<>();
        byBand.forEach((band, own) -> {
            BandCircuits made = circuits(band, own);
            own.forEach(scene -> circuits.put(scene, made));
        });
        return circuits;
    }

    private Band band(PlannedScene scene) {
        double dialHz = scene.dialHz();
        return plan.bands().stream()
                .filter(band -> band.lowHz() <= dialHz && dialHz <= band.highHz())
                .findFirst()
                .orElseGet(() -> unnamed(scene));
    }

    /** The points of a stage that says nothing of its range. */
    private Band unnamed(PlannedScene scene) {
        double[] points = scenes.stream()
                .filter(each -> each.atAerial() && each.stage().equals(scene.stage()))
                .mapToDouble(PlannedScene::dialHz)
                .sorted()
                .toArray();
        return new Band(scene.stage().name(), points[0] / MARGIN, points[points.length - 1] * MARGIN);
    }

    private BandCircuits circuits(Band band, List<PlannedScene> own) {
        double intermediateHz = own.stream()
                .filter(scene -> scene.role() == Role.OSCILLATOR || scene.role() == Role.SIGNAL)
                .findFirst()
                .orElse(own.get(0))
                .intermediateHz();
        double offsetHz = own.get(0).side().sign() * intermediateHz;
        boolean vhf = band.highHz() > Parts.VHF_HZ;
        double q = vhf ? 30 : band.highHz() > 3e6 ? 60 : 80;
        TunedRange bare = range(band, offsetHz, vhf ? VHF_FARAD : OSCILLATOR_FARAD, Map.of());
        double passes = Objects.requireNonNull(strips.get(intermediateHz)).widthHz();
        Map<PartKind, List<Knob>> oscillator = new EnumMap<>(PartKind.class);
        for (PlannedScene scene : distinct(own, Role.OSCILLATOR)) {
            double oscillatorHz = scene.dialHz() + offsetHz;
            double off = Math.min((vhf ? VHF_DIAL_OFF : DIAL_OFF) * scene.dialHz(), IMAGE_SHARE * 2 * intermediateHz)
                    / oscillatorHz;
            add(oscillator, scene, band, bare, REACH * off, passes / oscillatorHz);
        }
        List<Map<PartKind, List<Knob>>> signals = new ArrayList<>();
        TunedRange bareSignal = range(band, 0, vhf ? VHF_FARAD : SIGNAL_FARAD, Map.of());
        for (PlannedScene scene : distinct(own, Role.SIGNAL)) {
            add(withRoom(signals, kind(scene, band)), scene, band, bareSignal, REACH * SIGNAL_OFF, 1 / q);
        }
        if (signals.isEmpty()) {
            signals.add(Map.of());
        }
        return new BandCircuits(
                range(band, offsetHz, vhf ? VHF_FARAD : OSCILLATOR_FARAD, oscillator),
                signals.stream()
                        .map(parts -> range(band, 0, vhf ? VHF_FARAD : SIGNAL_FARAD, parts))
                        .toList(),
                q,
                vhf ? VHF_COUPLING_FARAD : CONVERTER_COUPLING_FARAD);
    }

    private static TunedRange range(Band band, double offsetHz, double topFarad, Map<PartKind, List<Knob>> parts) {
        double ratio = (band.highHz() + offsetHz) / (band.lowHz() + offsetHz);
        return new TunedRange(
                band.tuning(),
                offsetHz,
                band.lowHz() + offsetHz,
                band.highHz() + offsetHz,
                topFarad,
                PADDER * topFarad * ratio * ratio,
                parts);
    }

    private List<PlannedScene> distinct(List<PlannedScene> own, Role role) {
        Map<String, PlannedScene> named = new LinkedHashMap<>();
        own.stream()
                .filter(scene -> scene.role() == role)
                .forEach(scene -> named.putIfAbsent(scene.step().adjuster(), scene));
        return List.copyOf(named.values());
    }

    /** The first circuit that has no such part yet: a trimmer and a coil belong together, two trimmers do not. */
    private static Map<PartKind, List<Knob>> withRoom(List<Map<PartKind, List<Knob>>> circuits, PartKind kind) {
        for (Map<PartKind, List<Knob>> each : circuits) {
            if (!each.containsKey(kind)) {
                return each;
            }
        }
        Map<PartKind, List<Knob>> fresh = new EnumMap<>(PartKind.class);
        circuits.add(fresh);
        return fresh;
    }

    private static PartKind kind(PlannedScene scene, Band band) {
        return PartKind.of(scene.step().adjuster(), scene.dialHz() >= Math.sqrt(band.lowHz() * band.highHz()));
    }

    private void add(
            Map<PartKind, List<Knob>> parts,
            PlannedScene scene,
            Band band,
            TunedRange bare,
            double reach,
            double width) {
        PartKind kind = kind(scene, band);
        double worth = Parts.worth(kind, band.highHz());
        double perTurn = bare.perTurn(kind, worth, scene.dialHz());
        String name = scene.step().adjuster();
        Knob knob = knobs.computeIfAbsent(
                name,
                fresh -> kind == PartKind.TRIMMER
                        ? Parts.trimmer(fresh, band.highHz(), perTurn, reach, width)
                        : Parts.tuning(fresh, worth, perTurn, reach, width));
        parts.computeIfAbsent(kind, none -> new ArrayList<>()).add(knob);
    }
}
