package org.slugpeak.core.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What the signal goes through while an adjuster is turned, from the generator to the meter. Gains along one path add up to one figure;
 * those along several do not. All methods are pure; any thread may call them.
 */
public final class SignalPath {

    private SignalPath() {}

    /**
     * The path of a step, by name: that of its stage, and of frequency, injection and meter point what is not the same for all of its
     * steps.
     *
     * @param stage that has the step
     * @param step one of its steps
     * @return the same for two steps of a stage where their path is the same
     */
    public static String of(Stage stage, PlanStep step) {
        List<String> names = new ArrayList<>(List.of(stage.name()));
        List<Function<Setup, String>> parts = List.of(SignalPath::generator, Setup::injection, Setup::meterPoint);
        for (Function<Setup, String> part : parts) {
            String own = part.apply(step.setup());
            boolean differs = stage.steps().stream()
                    .anyMatch(other -> !part.apply(other.setup()).equals(own));
            if (differs && !own.isEmpty()) {
                names.add(own);
            }
        }
        return String.join(", ", names);
    }

    /**
     * Whether all steps of a stage that gain decibels have one path.
     *
     * @param stage any
     * @return true where what they gain adds up
     */
    static boolean isOneThrough(Stage stage) {
        return stage.steps().stream()
                        .filter(step -> step.goal().hasDecibels())
                        .map(step -> of(stage, step))
                        .distinct()
                        .count()
                == 1;
    }

    private static String generator(Setup setup) {
        return setup.generatorHz().isEmpty()
                ? ""
                : new BigDecimal(Math.rint(setup.generatorHz().getAsDouble()))
                                .movePointLeft(3)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " kHz";
    }
}
