package org.slugpeak.cli.feed;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.generator.LevelUnit;

class GeneratorMetTest {

    private static GeneratorReach reach(double lowestHz, double highestHz) {
        return new GeneratorReach(true, true, true, lowestHz, highestHz, 0, Double.POSITIVE_INFINITY, LevelUnit.DBM, 0);
    }

    @Test
    void whatCannotBeGivenIsRefusedBeforeAnythingIsSet() {
        BadConfiguration refused = assertThrows(
                BadConfiguration.class, () -> GeneratorMet.refuseBeyond(reach(9e3, 30e6), List.of(455e3, 98.1e6)));
        assertEquals(
                "the generator goes from 9 to 30000 kHz, and 98100 kHz will be wanted: leave that out (--only, --span), or set it by"
                        + " hand without --generator",
                refused.getMessage());
    }

    @Test
    void whereNobodyKnowsItsLimitsNothingIsRefused() {
        assertDoesNotThrow(() ->
                GeneratorMet.refuseBeyond(reach(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), List.of(98.1e6)));
    }
}
