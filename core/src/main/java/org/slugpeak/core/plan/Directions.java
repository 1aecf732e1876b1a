package org.slugpeak.core.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Puts the steps of a plan into words. All methods are pure. */
final class Directions {

    private static final double MEGAHERTZ_FROM_HZ = 3e6;

    private Directions() {}

    static String setUp(Setup setup) {
        List<String> parts = new ArrayList<>();
        setup.generatorHz().ifPresent(hz -> parts.add("generator " + frequency(hz)));
        add(parts, "modulation ", setup.modulation());
        add(parts, "to ", setup.injection());
        add(parts, "dummy antenna ", setup.dummyAntenna());
        setup.dialHz().ifPresent(hz -> parts.add("dial " + frequency(hz)));
        add(parts, "dial ", setup.dial());
        add(parts, "meter at ", setup.meterPoint());
        setup.level()
                .ifPresent(level -> parts.add(
                        "reading " + number(level.low()) + " to " + number(level.high()) + " " + level.unit()));
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String before, String text) {
        if (!text.isEmpty()) {
            parts.add(before + text);
        }
    }

    static String turn(PlanStep step) {
        String how = switch (step.goal()) {
            case PEAK -> "to the maximum";
            case DIP -> "to the MINIMUM";
            case ZERO -> "to zero between plus and minus";
            case ON_DIAL -> "to the maximum, the pointer staying on its mark";
        };
        String rocking = step.rock() ? ", rocking the gang across the signal meanwhile" : "";
        String notes = step.notes().isEmpty() ? "" : " (" + String.join("; ", step.notes()) + ")";
        return step.adjuster() + ": " + how + rocking + notes;
    }

    static String damp(Damping damping) {
        return "put " + number(damping.ohms() / 1e3) + " kohm across " + damping.winding() + " meanwhile";
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
