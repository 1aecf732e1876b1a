package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.SafetyAnswers;

class SafetyWordsTest {

    private static List<String> dangers(Chassis chassis, boolean isolated, boolean earthed, boolean leadsFitted) {
        return SafetyWords.dangers(new SafetyAnswers(chassis, isolated, earthed, leadsFitted));
    }

    /** A capacitor lets no direct voltage pass, so in the lead of a DC meter it is no protection but the end of measuring. */
    @Test
    void capacitorBelongsInTheLeadOfTheGeneratorAndADividerInThatOfTheMeter() {
        assertEquals(
                List.of("high tension may reach generator or meter: put a blocking capacitor of 400 V or more into the"
                        + " generator lead, and a divider or resistor into the meter lead"),
                dangers(Chassis.TRANSFORMER, true, false, false));
    }

    /** IEC 60384-14: class Y is for capacitors whose failure could give a person an electric shock. */
    @Test
    void onAChassisThatMayBeLiveItIsOfClassY1() {
        for (Chassis each : List.of(Chassis.LIVE, Chassis.UNKNOWN)) {
            String danger = dangers(each, true, false, false).get(0);
            assertTrue(danger.contains("class Y1") && !danger.contains("400 V"), danger);
        }
    }

    @Test
    void anEarthedGeneratorUndoesTheIsolation() {
        String danger = dangers(Chassis.LIVE, true, true, true).get(0);
        assertTrue(danger.contains("undoes the isolation") && danger.contains("generator on a battery"), danger);
        assertTrue(danger.contains("never take off a mains earth"), danger);
    }

    @Test
    void theRecordHasOneLineForEachAnswer() {
        assertEquals(
                List.of(
                        "chassis: live",
                        "isolation transformer: yes",
                        "a lead earths the set: no",
                        "blocking capacitor (class Y1 where the chassis may be live) in the generator lead, divider or resistor in the meter lead: yes"),
                SafetyWords.lines(new SafetyAnswers(Chassis.LIVE, true, false, true)));
    }
}
