package org.slugpeak.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * What the user says about the dangers of the bench before anything is connected. Local codes and licensed practice come
 * first. Immutable; any thread may use it.
 *
 * @param chassis what the chassis is tied to
 * @param isolationTransformer whether the set, and nothing else, is on an isolation transformer
 * @param computerEarthed whether the computer ties the meter lead to mains earth: neither an isolated port nor a laptop on its
 *     battery
 * @param blockingCapacitor whether generator and meter leads have blocking capacitors or dividers for the voltages there
 */
public record SafetyAnswers(
        Chassis chassis, boolean isolationTransformer, boolean computerEarthed, boolean blockingCapacitor) {

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
        if (chassis != Chassis.TRANSFORMER && computerEarthed) {
            dangers.add("the computer earths the chassis: use an isolated port, or a laptop on its battery");
        }
        if (!blockingCapacitor) {
            dangers.add(
                    "high tension may reach generator or meter: put blocking capacitors of 400 V or more into the leads");
        }
        return List.copyOf(dangers);
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
                "computer earths the meter lead: " + yesNo(computerEarthed),
                "blocking capacitors in the leads: " + yesNo(blockingCapacitor));
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }
}
