package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.testkit.EveryRecord;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.session.Manner;

/**
 * No sentence brings a hand to a terminal without the words that keep it alive: off, unplugged, discharged, measured, and only then
 * the job; hands away before it goes on. Common practice, no source; 30 V: IEC 61010-1 clause 6.3, from memory.
 */
class SafeSentencesTest {

    private static final String WIDE = """
            name = "wide"
            if-kHz = 455
            [[stage]]
            name = "IF"
            generator-kHz = "IF"
            inject = "converter grid"
            meter = "detector"
            accept = "skirts"
            [[stage.step]]
            adjust = "T1 top"
            damp = "T1 bottom"
            damp-ohm = 22000
            [[stage.step]]
            adjust = "T1 bottom"
            damp = "T1 top"
            damp-ohm = 22000
            damp-ht = false
            """;

    private static final RecordSentences WORDS = new RecordSentences();

    /** What is done at a terminal; knobs, the dial and the choice of a setting are not. */
    private static final Pattern AT_A_TERMINAL =
            Pattern.compile("\\bput (?!the (generator|dial)\\b)|\\btake (?!the (one|trimmer)\\b)"
                    + "|\\b(fit|clip|renew|seal|solder|unsolder|lift|remove|connect)\\b"
                    + "|\\b(generator to (?!a |\\d)|meter at|dummy antenna|AVC line (held|tied)|clamp on)\\b"
                    + "|\\bmeasure the\\b|\\bcheck (screens|filter)|\\bdamp the\\b|\\blook for (a|the) fault");

    private static final Pattern OFF = Pattern.compile("\\bOFF, unplug(ged)?, discharged?, measured? under 30 V\\b");
    private static final Pattern ON = Pattern.compile("\\bON\\b");

    private static boolean isSafe(String sentence) {
        Matcher touch = AT_A_TERMINAL.matcher(sentence);
        if (!touch.find()) {
            return true;
        }
        Matcher off = OFF.matcher(sentence);
        Matcher on = ON.matcher(sentence);
        boolean offFirst = off.find() && off.end() <= touch.start();
        int handsAway = sentence.indexOf("hands away");
        return offFirst && (!on.find() || (handsAway > off.end() && handsAway < on.start()));
    }

    static Stream<String> sentencesOfShippedPlans() throws BadConfiguration {
        Path template = Path.of(System.getProperty("slugpeak.shared"), "plans", "template.toml");
        return Stream.of(
                        PlanFiles.load("am-superhet", OptionalDouble.of(455e3)),
                        PlanFiles.load("tarnfield-54a", OptionalDouble.empty()),
                        PlanFiles.load("quillmere-fm-8", OptionalDouble.empty()),
                        PlanFiles.load("larkmoor-6c", OptionalDouble.empty()),
                        PlanFiles.load("brackenmere-cr2", OptionalDouble.empty()),
                        PlanFiles.load(template.toString(), OptionalDouble.empty()),
                        damped())
                .flatMap(plan -> new SpokenPlan(plan).sentences().stream().map(each -> plan.name() + ": " + each));
    }

    private static Plan damped() throws BadConfiguration {
        try {
            Path file = Files.createTempFile("wide", ".toml");
            Files.writeString(file, WIDE);
            Plan plan = PlanFiles.load(file.toString(), OptionalDouble.empty());
            Files.delete(file);
            return plan;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<String> sentencesOfEveryKind() {
        return EveryRecord.list().stream()
                .filter(record -> record.manner() == Manner.ASKS || record.manner() == Manner.ALARM)
                .map(WORDS::of);
    }

    @ParameterizedTest
    @MethodSource({"sentencesOfShippedPlans", "sentencesOfEveryKind"})
    void noHandIsBroughtToATerminalOfASetThatIsOn(String sentence) {
        assertTrue(isSafe(sentence), sentence);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "put 22 kohm across T1 bottom meanwhile",
                "take the resistor off T1 bottom again",
                "generator 455 kHz, modulation none, generator to converter grid, meter at detector",
                "switch off, measure the padder and its lead",
                "put 22 kohm across T1 top; set OFF, unplug, discharge, measure under 30 V; hands away; set ON",
                "set OFF, unplug, discharge, measure under 30 V; put 22 kohm across T1 top; set ON",
                "set OFF, unplug; put 22 kohm across T1 top; hands away; set ON",
                "generator 455 kHz, AVC line held at -3 V by a battery",
                "generator 455 kHz, no clamp on the AVC line",
            })
    void andThisTestSeesOneThatDoes(String sentence) {
        assertFalse(isSafe(sentence), sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"put the generator's output back on", "set the dial lower", "T1 top: to the maximum"})
    void knobsAreSetWithTheSetOn(String sentence) {
        assertTrue(isSafe(sentence));
        assertFalse(OFF.matcher(sentence).find());
    }

    /** The plans speak of terminals at all: else the table above would prove nothing. */
    @Test
    void everyPlanSpeaksOfTerminals() throws BadConfiguration {
        List<String> all = sentencesOfShippedPlans().toList();
        for (String name : List.of(
                "AM superhet",
                "Tarnfield 54A",
                "Quillmere FM-8",
                "Larkmoor 6-C",
                "Brackenmere CR-2",
                "My set",
                "wide")) {
            assertTrue(all.stream()
                    .anyMatch(each ->
                            each.startsWith(name) && AT_A_TERMINAL.matcher(each).find()));
        }
    }
}
