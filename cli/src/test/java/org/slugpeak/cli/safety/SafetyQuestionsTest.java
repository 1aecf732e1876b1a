package org.slugpeak.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.cli.words.ReportFact;

class SafetyQuestionsTest {

    private final StringWriter shown = new StringWriter();

    private List<String> answer(String... lines) throws BadConfiguration {
        BufferedReader in = new BufferedReader(new StringReader(String.join("\n", lines) + "\n"));
        return new SafetyQuestions(in, new PrintWriter(shown), spoken -> {}).ask();
    }

    @Test
    void fourSafeAnswersAreRecorded() throws BadConfiguration {
        assertEquals(
                List.of(
                        "chassis: transformer",
                        "isolation transformer: yes",
                        "a lead earths the set: no",
                        "blocking capacitor (class Y1 where the chassis may be live) in the generator lead, divider or resistor in the meter lead: yes"),
                answer("transformer", "yes", "no", "yes"));
    }

    @Test
    void theSetIsAskedForAndWhoPressesEnterOrLeavesTellsNothing() throws BadConfiguration {
        BufferedReader in = new BufferedReader(new StringReader("Tarnfield\n\n"));
        List<ReportFact> asked = List.of(ReportFact.MAKER, ReportFact.MODEL, ReportFact.SERIAL);
        assertEquals(
                Map.of(ReportFact.MAKER, "Tarnfield"),
                new SafetyQuestions(in, new PrintWriter(shown), spoken -> {}).facts(asked));
        assertTrue(shown.toString().contains("For the record, serial number (Enter: not told):"), shown::toString);
    }

    @Test
    void askAgainWhatWasNotUnderstood() throws BadConfiguration {
        assertEquals(4, answer("perhaps", "T", "y", "", "n", "y").size());
        assertTrue(shown.toString().contains("'perhaps' is none of the answers"), shown::toString);
    }

    @Test
    void noWordOfTheFirstIsBrokenAtTheEdgeOfAnOrdinaryWindow() {
        assertThrows(BadConfiguration.class, () -> answer());
        List<String> lines = shown.toString().lines().limit(2).toList();
        assertTrue(
                lines.get(1).startsWith("set stays off and unplugged"),
                "what goes over the edge stands in the next row, whole");
        assertTrue(lines.get(0).length() < 80, lines.get(0));
    }

    @Test
    void dangerStopsTheWork() {
        String message = assertThrows(BadConfiguration.class, () -> answer("live", "no", "no", "yes", ""))
                .getMessage();
        assertTrue(message.startsWith("not begun: the chassis may stand at full mains"), message);
        assertTrue(shown.toString().contains("DANGER: "), shown.toString());
    }

    @Test
    void dangerMayBeTakenOnWithAReasonThatIsRecorded() throws BadConfiguration {
        List<String> lines = answer("live", "no", "no", "yes", "battery set, no mains here");
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("danger not removed: ")), lines.toString());
        assertEquals("declined: battery set, no mains here", lines.get(lines.size() - 1));
    }

    @Test
    void noAnswerIsNoConsent() {
        assertThrows(BadConfiguration.class, () -> answer("transformer", "yes"));
    }
}
