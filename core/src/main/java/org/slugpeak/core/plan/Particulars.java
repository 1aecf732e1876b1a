package org.slugpeak.core.plan;

import java.util.Optional;
import org.slugpeak.core.level.MeterPoint;

/**
 * What a plan says of a set-up beyond what every plan says. Immutable; any thread may use it.
 *
 * @param band to which the set is switched; empty where the plan names none
 * @param intermediate the intermediate frequency that the step is about; empty where the plan leaves open which of several
 * @param generatorMeasured whether the generator's frequency is one that was measured, of a crystal for example, and its number in
 *     the plan only says near what
 * @param point what kind of point the meter is at; empty where the plan has words only
 * @param avc what stands on the gain control line; empty in a plan that nowhere holds it
 */
public record Particulars(
        Optional<Band> band,
        Optional<IntermediateFrequency> intermediate,
        boolean generatorMeasured,
        Optional<MeterPoint> point,
        Optional<AvcLine> avc) {

    /** Of a plan that says none of it. */
    public static final Particulars NONE =
            new Particulars(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty());

    /**
     * The same with another state of the gain control line.
     *
     * @param line what stands on it
     * @return a copy
     */
    Particulars withAvc(AvcLine line) {
        return new Particulars(band, intermediate, generatorMeasured, point, Optional.of(line));
    }
}
