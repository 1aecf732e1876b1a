package org.slugpeak.core.plan;

import java.util.Optional;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.scale.ScaleEstimate;

/**
 * What a plan says of a set-up beyond what every plan says. Immutable; any thread may use it.
 *
 * @param band to which the set is switched; empty where the plan names none
 * @param intermediate the intermediate frequency that the step is about; empty where the plan leaves open which of several
 * @param generatorMeasured whether the generator's frequency is one that was measured, of a crystal for example, and its number in
 *     the plan only says near what
 * @param point what kind of point the meter is at; empty where the plan has words only
 * @param avc what stands on the gain control line; empty in a plan that nowhere holds it
 * @param generatorMark where the generator's dial is to be set for its frequency; empty where nobody knows how the dial errs
 */
public record Particulars(
        Optional<Band> band,
        Optional<IntermediateFrequency> intermediate,
        boolean generatorMeasured,
        Optional<MeterPoint> point,
        Optional<AvcLine> avc,
        Optional<ScaleEstimate> generatorMark) {

    /** Of a plan that says none of it. */
    public static final Particulars NONE =
            new Particulars(Optional.empty(), Optional.empty(), false, Optional.empty(), Optional.empty());

    /**
     * Of a plan: of the dial of the workshop's generator it knows nothing.
     *
     * @param band to which the set is switched
     * @param intermediate the intermediate frequency that the step is about
     * @param generatorMeasured whether the generator's frequency is one that was measured
     * @param point what kind of point the meter is at
     * @param avc what stands on the gain control line
     */
    public Particulars(
            Optional<Band> band,
            Optional<IntermediateFrequency> intermediate,
            boolean generatorMeasured,
            Optional<MeterPoint> point,
            Optional<AvcLine> avc) {
        this(band, intermediate, generatorMeasured, point, avc, Optional.empty());
    }

    /**
     * The same with a mark for the generator's dial.
     *
     * @param mark where it is to be set
     * @return a copy
     */
    Particulars withMark(ScaleEstimate mark) {
        return new Particulars(band, intermediate, generatorMeasured, point, avc, Optional.of(mark));
    }

    /**
     * The same with another state of the gain control line.
     *
     * @param line what stands on it
     * @return a copy
     */
    Particulars withAvc(AvcLine line) {
        return new Particulars(band, intermediate, generatorMeasured, point, Optional.of(line), generatorMark);
    }
}
