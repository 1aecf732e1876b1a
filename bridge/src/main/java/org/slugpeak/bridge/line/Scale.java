package org.slugpeak.bridge.line;

import java.util.OptionalDouble;
import org.slugpeak.core.reading.Condition;

/**
 * From the number in a line to the reading: {@code counts * factor + offset}, and the counts at which a converter stands at
 * the end of its scale. Immutable; any thread may use it.
 *
 * @param factor units for one count
 * @param offset what zero counts read
 * @param highest the largest counts there are
 * @param lowest the smallest counts there are, where they are an overload and not just nothing
 */
record Scale(double factor, double offset, OptionalDouble highest, OptionalDouble lowest) {

    /** From one end of the scale to the other, in units; a scale whose lower end is no overload begins at 0. */
    OptionalDouble span() {
        return highest.isPresent()
                ? OptionalDouble.of((highest.getAsDouble() - lowest.orElse(0)) * Math.abs(factor))
                : OptionalDouble.empty();
    }

    double reading(double counts) {
        return counts * factor + offset;
    }

    Condition condition(double counts) {
        boolean top = highest.isPresent() && counts >= highest.getAsDouble();
        boolean bottom = lowest.isPresent() && counts <= lowest.getAsDouble();
        return top || bottom ? Condition.FULL_SCALE : Condition.OK;
    }
}
