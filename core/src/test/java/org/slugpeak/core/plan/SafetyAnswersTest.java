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

    /** A capacitor lets no direct voltage pass, so in the lead of a DC meter it is no protection but the end of measuring. */
    @Test
    void capacitorBelongsInTheLeadOfTheGeneratorAndADividerInThatOfTheMeter() {
        assertEquals(
                List.of("high tension may reach generator or meter: put a blocking capacitor of 400 V or more into the"
                        + " generator lead, and a divider or resistor into the meter lead"),
                new SafetyAnswers(Chassis.TRANSFORMER, true, false, false).dangers());
    }

    /** IEC 60384-14: class Y is for capacitors whose failure could give a person an electric shock. */
    @Test
    void onAChassisThatMayBeLiveItIsOfClassY1() {
        for (Chassis each : List.of(Chassis.LIVE, Chassis.UNKNOWN)) {
            String danger =
                    new SafetyAnswers(each, true, false, false).dangers().get(0);
            assertTrue(danger.contains("class Y1") && !danger.contains("400 V"), danger);
        }
    }

    @Test
    void anEarthedGeneratorUndoesTheIsolation() {
        String danger =
                new SafetyAnswers(Chassis.LIVE, true, true, true).dangers().get(0);
        assertTrue(danger.contains("undoes the isolation") && danger.contains("generator on a battery"), danger);
        assertTrue(danger.contains("never take off a mains earth"), danger);
    }
}
