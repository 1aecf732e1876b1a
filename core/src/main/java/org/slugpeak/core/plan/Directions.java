package org.slugpeak.core.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.safety.SafeHands;

/** Puts the steps of a plan into words. All methods are pure. */
final class Directions {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private Directions() {}

    /**
     * How things stand at the beginning. The leads are on already, as the safety questions have it, so this is no order to touch
     * them; it says how it is done where one is on the wrong point.
     */
    static String firstSetUp(Setup setup) {
        String leads = leads(setup);
        String how = "leads, moved only with " + SafeHands.SAFE + ", hands away before ON: ";
        return Stream.of(knobs(setup), leads.isEmpty() ? "" : how + leads)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** What a hand that stays out of the chassis sets. */
    static String knobs(Setup setup) {
        List<String> parts = new ArrayList<>();
        setup.generatorHz().ifPresent(hz -> parts.add("generator " + frequency(hz)));
        add(parts, "modulation ", setup.modulation());
        setup.dialHz().ifPresent(hz -> parts.add("dial " + frequency(hz)));
        add(parts, "dial ", setup.dial());
        setup.level()
                .ifPresent(level -> parts.add(
                        "reading " + number(level.low()) + " to " + number(level.high()) + " " + level.unit()));
        return String.join(", ", parts);
    }

    /** What goes to which terminal. */
    static String leads(Setup setup) {
        List<String> parts = new ArrayList<>();
        boolean highInjection = setup.highTension().atInjection();
        add(parts, "generator to ", setup.injection(), highInjection ? " (may be HT: blocking capacitor)" : "");
        add(parts, "dummy antenna ", setup.dummyAntenna());
        add(parts, "meter at ", setup.meterPoint(), setup.highTension().atMeter() ? " (may be HT: divider)" : "");
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String before, String text) {
        add(parts, before, text, "");
    }

    private static void add(List<String> parts, String before, String text, String after) {
        if (!text.isEmpty()) {
            parts.add(before + text + after);
        }
    }

    static String turn(PlanStep step) {
        String how = step.rock() ? rocking(step.goal()) : standing(step.goal());
        String notes = step.notes().isEmpty() ? "" : " (" + String.join("; ", step.notes()) + ")";
        return step.adjuster() + ": " + how + notes;
    }

    private static String standing(Goal goal) {
        return switch (goal) {
            case PEAK -> "to the maximum";
            case DIP -> "to the MINIMUM";
            case ZERO -> "to zero between plus and minus";
            case ON_DIAL -> "to the maximum, the pointer staying on its mark";
        };
    }

    /** While the gang is rocked the pointer cannot stay where it is: the greatest sweep counts, wherever it is met. */
    private static String rocking(Goal goal) {
        String near = goal == Goal.ON_DIAL ? "; output counts before the exact mark" : "";
        return "rock the gang across the signal, to the greatest of its sweeps" + near;
    }

    static String damp(Damping damping) {
        String high = damping.highTension() ? " (may be HT)" : "";
        return "put " + ohms(damping) + " across " + damping.winding() + high;
    }

    static String undamp(Damping damping) {
        String high = damping.highTension() ? " (may be HT)" : "";
        return "take the " + ohms(damping) + " off " + damping.winding() + high;
    }

    private static String ohms(Damping damping) {
        return number(damping.ohms() / 1e3) + " kohm";
    }

    private static String frequency(double hz) {
        return hz < MEGAHERTZ_FROM_HZ ? number(hz / 1e3) + " kHz" : number(hz / 1e6) + " MHz";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
