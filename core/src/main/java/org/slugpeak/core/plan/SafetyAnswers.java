package org.slugpeak.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What the user says about the dangers of the bench before anything is connected. Local codes and licensed practice come
 * first. Immutable; any thread may use it.
 *
 * @param chassis what the chassis is tied to; an autotransformer ties it to the mains
 * @param isolationTransformer whether the set, and nothing else, is on an isolation transformer
 * @param earthed whether any lead ties the set to mains earth: that of the computer, unless its port is isolated or it is a laptop
 *     on its battery; the return of the generator, of an oscilloscope, of an aerial
 * @param leadsFitted whether the generator's lead has a blocking capacitor and the meter's lead a divider or resistor: a capacitor
 *     there would let no direct voltage pass
 */
public record SafetyAnswers(Chassis chassis, boolean isolationTransformer, boolean earthed, boolean leadsFitted) {

    private static final String BOTH =
            "blocking capacitor in the generator lead, divider or resistor in the meter lead";

    /**
     * What must be put right first.
     *
     * @return one line each; empty where nothing speaks against beginning
     */
    public List<String> dangers() {
        List<String> dangers = new ArrayList<>();
        if (chassis != Chassis.TRANSFORMER && !isolationTransformer) {
            dangers.add("the chassis may stand at full mains: put the set alone on an isolation transformer");
        }
        if (chassis != Chassis.TRANSFORMER && earthed) {
            dangers.add(
                    "an earthed lead undoes the isolation, and shorts the mains without it: computer behind an isolated"
                            + " port or on its battery; generator on a battery, or Y1 capacitors in both its wires;"
                            + " never take off a mains earth");
        }
        if (!leadsFitted) {
            dangers.add("high tension may reach generator or meter: put " + capacitor()
                    + " into the generator lead, and a" + " divider or resistor into the meter lead");
        }
        return List.copyOf(dangers);
    }

    /** On a chassis that may be live the capacitor stands between the mains and a person, so its leakage is limited, too. */
    private String capacitor() {
        return chassis == Chassis.TRANSFORMER
                ? "a blocking capacitor of 400 V or more"
                : "capacitors of class Y1 (IEC 60384-14), 4.7 nF together at most, in both wires,";
    }

    /**
     * The answers for the record.
     *
     * @return one line each
     */
    public List<String> lines() {
        return List.of(
                "chassis: " + chassis.code(),
                "isolation transformer: " + yesNo(isolationTransformer),
                "a lead earths the set: " + yesNo(earthed),
                BOTH + ": " + yesNo(leadsFitted));
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }
}
