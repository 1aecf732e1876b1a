package org.slugpeak.core.rehearsal;

import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.OscillatorSide;

/**
 * What a step of a plan means for the set: which circuit its adjuster is in, and where generator and meter stand. Immutable; any
 * thread may use it.
 *
 * @param stage of which the step is one
 * @param step as the plan has it
 * @param role what its adjuster is
 * @param point where the meter stands
 * @param signalHz what the generator gives, Hz
 * @param dialHz where the pointer stands, Hz
 * @param intermediateHz of the strip that the signal goes through, Hz
 * @param atAerial whether the generator feeds the aerial; else the converter's grid
 * @param side of the signal on which the oscillator runs
 */
public record PlannedScene(
        Stage stage,
        PlanStep step,
        Role role,
        MeterPoint point,
        double signalHz,
        double dialHz,
        double intermediateHz,
        boolean atAerial,
        OscillatorSide side) {

    /**
     * The step by its names.
     *
     * @return for a line of text
     */
    public String name() {
        return "step '" + step.adjuster() + "' of stage '" + stage.name() + "'";
    }

    /** Whether the generator is modulated: where the set is listened to, but for a beat. */
    boolean isModulated() {
        return point == MeterPoint.VOICE_COIL && role != Role.BEAT_OSCILLATOR;
    }

    /** Where the generator's lead goes. */
    Generator.Lead lead() {
        return atAerial ? Generator.Lead.AERIAL : Generator.Lead.CONVERTER_GRID;
    }
}
