package org.slugpeak.bridge.plan;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

/** The words that plans use. */
final class Words {

    static final Map<String, Chassis> CHASSIS = of(Chassis.values(), Chassis::code);
    static final Map<String, Goal> GOALS = of(Goal.values(), Goal::code);
    static final Map<String, TuningElement> TUNINGS = of(TuningElement.values(), TuningElement::code);
    static final Map<String, MeterPoint> POINTS = of(MeterPoint.values(), MeterPoint::code);
    static final Map<String, OscillatorSide> SIDES =
            Map.of("above", OscillatorSide.ABOVE, "below", OscillatorSide.BELOW);
    static final Map<String, Acceptance> ACCEPTANCES = of(Acceptance.values(), Acceptance::code);

    private Words() {}

    private static <T> Map<String, T> of(T[] values, Function<T, String> code) {
        return Arrays.stream(values).collect(Collectors.toUnmodifiableMap(code, Function.identity()));
    }
}
