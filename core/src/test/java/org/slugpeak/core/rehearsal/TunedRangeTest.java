package org.slugpeak.core.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.TuningElement;

/** Car radio of the reference tables: 540 to 1600 kHz ({@code shared/reference/rehearsal}, tracking). */
class TunedRangeTest {

    private static final double LOW_HZ = 540e3;
    private static final double HIGH_HZ = 1600e3;
    private static final double FARAD = 140.589e-12;
    private static final double PADDER_FARAD = 400e-12;

    private static double movedBy(TuningElement tuning, PartKind part, double change, double dialHz) {
        Knob knob = new Knob("part", turns -> turns * change, 1, 1);
        TunedRange range = new TunedRange(tuning, 0, LOW_HZ, HIGH_HZ, FARAD, PADDER_FARAD, Map.of(part, List.of(knob)));
        knob.turnTo(1);
        return range.hz(dialHz) / dialHz - 1;
    }

    @Test
    void aTrimmerMovesARangeThatIsTunedBySlugsByTheSameFractionEverywhere() {
        double low = movedBy(TuningElement.PERMEABILITY, PartKind.TRIMMER, 1e-12, LOW_HZ);
        assertEquals(-0.5e-12 / FARAD, low, 3e-5);
        assertEquals(low, movedBy(TuningElement.PERMEABILITY, PartKind.TRIMMER, 1e-12, HIGH_HZ), 1e-9);
    }

    @Test
    void aCoilMovesThatRangeAsAPadderMovesOneThatIsTunedByACapacitor() {
        double coil = movedBy(TuningElement.PERMEABILITY, PartKind.COIL, 1e-3, LOW_HZ)
                / movedBy(TuningElement.PERMEABILITY, PartKind.COIL, 1e-3, HIGH_HZ);
        double padder = movedBy(TuningElement.CAPACITOR, PartKind.PADDER, 1e-4, LOW_HZ)
                / movedBy(TuningElement.CAPACITOR, PartKind.PADDER, 1e-4, HIGH_HZ);
        assertEquals(Math.pow(HIGH_HZ / LOW_HZ, 2), coil, 0.01);
        assertEquals(padder, coil, 0.01);
    }
}
