package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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
    void openLeadsAreADangerOnEveryChassis() {
        for (Chassis each : Chassis.values()) {
            SafetyAnswers answers = new SafetyAnswers(each, true, false, false);
            assertEquals(List.of(SafetyAnswers.Danger.OPEN_LEADS), answers.dangers());
            assertEquals(each != Chassis.TRANSFORMER, answers.mayBeLive());
        }
    }
}
