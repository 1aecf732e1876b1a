package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Common practice, no source: a set without mains transformer is live until it is isolated. */
class SafetyAnswersTest {

    @Test
    void isolatedTransformerSetIsNoDanger() {
        assertTrue(new SafetyAnswers(Chassis.TRANSFORMER, true, true, true)
                .dangers()
                .isEmpty());
    }

    @Test
    void unknownChassisCountsAsLive() {
        assertEquals(
                1,
                new SafetyAnswers(Chassis.UNKNOWN, false, false, true).dangers().size());
        assertEquals(
                new SafetyAnswers(Chassis.LIVE, false, true, false).dangers(),
                new SafetyAnswers(Chassis.UNKNOWN, false, true, false).dangers());
    }

    @Test
    void earthedComputerOnALiveChassisIsADangerEvenBehindAnIsolationTransformer() {
        assertEquals(
                1, new SafetyAnswers(Chassis.LIVE, true, true, true).dangers().size());
    }

    @Test
    void leadsWantBlockingCapacitors() {
        assertTrue(new SafetyAnswers(Chassis.TRANSFORMER, true, false, false)
                .dangers()
                .get(0)
                .contains("400 V"));
    }
}
