package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.receiver.Tank;

/**
 * Makes the amplifier of one intermediate frequency. Two adjusters whose names differ only in where the winding sits are one
 * transformer; where no names tell, two that follow each other are. Part values are those of the reference tables for rehearsals.
 */
final class StripBuilder {

    private static final String PLACES =
            "\\b(top|bottom|upper|lower|primary|secondary|pri|sec|grid|anode|plate|diode|slug|core|trimmer)\\b|(?<=\\d)[ab]\\b";

    /** Just under critical, as in the demonstration set. */
    static final double KAPPA = Math.sqrt(0.9);

    /** What a plan has damped is over-coupled; how much is a figure of the reference tables. */
    private static final double OVER = 1.5;

    /** What it judges by its skirts has the flattest top. */
    private static final double FLATTEST = 1;

    private final double centreHz;
    private final List<PlannedScene> scenes;
    private final Map<String, Knob> knobs;
    private final double kappa;

    StripBuilder(double centreHz, List<PlannedScene> scenes, Map<String, Knob> knobs, double kappa) {
        this.kappa = kappa;
        this.centreHz = centreHz;
        this.scenes = scenes;
        this.knobs = knobs;
    }

    IfStrip build() {
        Map<String, PlannedScene> peaked = distinct(Role.IF_WINDING);
        Map<String, PlannedScene> zeroed = distinct(Role.DISCRIMINATOR);
        Optional<FmDetector> detector =
                zeroed.values().stream().findFirst().map(zero -> new FmDetector(ending(zero, peaked)));
        Map<String, List<PlannedScene>> cans = peaked.values().stream()
                .collect(Collectors.groupingBy(
                        scene -> can(scene.step().adjuster()), LinkedHashMap::new, Collectors.toList()));
        boolean named = cans.values().stream().anyMatch(can -> can.size() == 2);
        List<PlannedScene> all = List.copyOf(peaked.values());
        List<StripPart> transformers = new ArrayList<>();
        if (named) {
            cans.values().forEach(can -> addPairs(can, transformers));
        } else {
            addPairs(all, transformers);
        }
        if (transformers.isEmpty()) {
            transformers.add(pair(fixed(), fixed(), kappa));
        }
        return new IfStrip(centreHz, transformers, detector);
    }

    private Map<String, PlannedScene> distinct(Role role) {
        Map<String, PlannedScene> named = new LinkedHashMap<>();
        scenes.stream()
                .filter(scene -> scene.role() == role)
                .forEach(scene -> named.putIfAbsent(scene.step().adjuster(), scene));
        return named;
    }

    private static String can(String adjuster) {
        return adjuster.toLowerCase(Locale.ROOT).replaceAll(PLACES, "").strip();
    }

    /** The zero's winding is the secondary; the other one of its can is the primary, and no longer one of the strip. */
    private Transformer ending(PlannedScene zero, Map<String, PlannedScene> peaked) {
        String can = can(zero.step().adjuster());
        Optional<PlannedScene> partner = peaked.values().stream()
                .filter(scene -> can(scene.step().adjuster()).equals(can))
                .findFirst();
        partner.ifPresent(scene -> peaked.remove(scene.step().adjuster()));
        return pair(partner.map(this::winding).orElseGet(this::fixed), winding(zero), 1);
    }

    private void addPairs(List<PlannedScene> can, List<StripPart> transformers) {
        for (int i = 0; i + 1 < can.size(); i += 2) {
            PlannedScene secondary = can.get(i);
            PlannedScene primary = can.get(i + 1);
            transformers.add(pair(winding(primary), winding(secondary), coupling(secondary, primary)));
        }
        if (can.size() % 2 == 1) {
            transformers.add(new Transformer(List.of(winding(can.get(can.size() - 1))), 0));
        }
    }

    private double coupling(PlannedScene secondary, PlannedScene primary) {
        Stream<PlanStep> damped = Stream.of(secondary.step(), primary.step());
        if (damped.anyMatch(step -> step.damping().isPresent())) {
            return OVER;
        }
        boolean flattest = secondary.step().acceptance() == Acceptance.SKIRTS;
        return flattest ? FLATTEST : kappa;
    }

    private Transformer pair(Winding primary, Winding secondary, double coupling) {
        return new Transformer(List.of(primary, secondary), coupling / q());
    }

    private Winding winding(PlannedScene scene) {
        String name = scene.step().adjuster();
        Knob slug = scene.role() == Role.DISCRIMINATOR ? Parts.zeroSlug(name, q()) : Parts.ifSlug(name, q());
        knobs.put(name, slug);
        return new Winding(Tank.tuned(scene.signalHz(), farad(), q()), slug);
    }

    private Winding fixed() {
        return new Winding(Tank.tuned(centreHz, farad(), q()), Parts.ifSlug("", q()));
    }

    private double q() {
        return centreHz < 2e6 ? 70 : 60;
    }

    private double farad() {
        double picofarad = centreHz < 200e3 ? 500 : centreHz < 350e3 ? 150 : centreHz < 5e6 ? 110 : 47;
        return picofarad * 1e-12;
    }
}
