package org.slugpeak.bridge.plan;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;

/** The words that plans use. */
final class Words {

    static final Map<String, Chassis> CHASSIS = of(Chassis.values(), Chassis::code);
    static final Map<String, Goal> GOALS = of(Goal.values(), Goal::code);
    static final Map<String, Acceptance> ACCEPTANCES = of(Acceptance.values(), Acceptance::code);

    private Words() {}

    private static <T> Map<String, T> of(T[] values, Function<T, String> code) {
        return Arrays.stream(values).collect(Collectors.toUnmodifiableMap(code, Function.identity()));
    }
}
