package org.slugpeak.bridge.plan;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Stage;

class PlanFilesTest {

    private static final String SMALL = """
            name = "Small set"
            if-kHz = 455
            [[stage]]
            name = "IF"
            generator-kHz = "IF"
            level = [0.5, 1.5]
            adjust = ["T1 top", "T1 bottom"]
            """;

    private static Plan read(String text) throws BadConfiguration {
        return new PlanReader("my.toml", OptionalDouble.empty()).read(text);
    }

    private static List<String> mistakesOf(String text) {
        BadConfiguration bad = assertThrows(BadConfiguration.class, () -> read(text));
        return bad.getMessage().lines().toList();
    }

    private static void assertMistake(String text, String mistake) {
        List<String> mistakes = mistakesOf(text);
        assertTrue(mistakes.stream().anyMatch(each -> each.contains(mistake)), () -> mistakes.toString());
    }

    @Nested
    class ShippedPlans {

        @Test
        void genericOneTakesTheIntermediateFrequencyGiven() throws BadConfiguration {
            Plan plan = PlanFiles.load("am-superhet", OptionalDouble.of(465e3));
            assertEquals(List.of(465e3), plan.intermediatesHz());
            assertEquals(
                    465e3,
                    plan.stages().get(0).steps().get(0).setup().generatorHz().orElseThrow());
            assertEquals(Chassis.UNKNOWN, plan.chassis());
        }

        @Test
        void genericOneAsksForTheIntermediateFrequency() {
            BadConfiguration bad =
                    assertThrows(BadConfiguration.class, () -> PlanFiles.load("am-superhet", OptionalDouble.empty()));
            assertTrue(bad.getMessage().contains("--if 455"), bad.getMessage());
        }

        @Test
        void tableSetGoesFromTheLastTransformerToTheAerial() throws BadConfiguration {
            Plan plan = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
            assertEquals(
                    List.of("T2 top", "T2 bottom", "T1 top", "T1 bottom"),
                    plan.stages().get(0).steps().stream()
                            .map(PlanStep::adjuster)
                            .toList());
            assertEquals(
                    List.of("AM IF", "IF trap", "MW oscillator", "MW aerial", "SW"),
                    plan.stages().stream().map(Stage::name).toList());
            assertEquals(Goal.DIP, plan.stages().get(1).steps().get(0).goal());
            PlanStep padder = plan.stages().get(2).steps().get(1);
            assertEquals(Goal.ON_DIAL, padder.goal());
            assertTrue(padder.rock());
            assertEquals(600e3, padder.setup().dialHz().orElseThrow());
            assertEquals(Chassis.TRANSFORMER, plan.chassis());
            assertEquals(10, plan.steps());
        }

        @Test
        void fmSetHasBothIntermediateFrequenciesAndAZero() throws BadConfiguration {
            Plan plan = PlanFiles.load("quillmere-fm-8", OptionalDouble.empty());
            assertEquals(List.of(10.7e6, 460e3), plan.intermediatesHz());
            assertEquals(Goal.ZERO, plan.stages().get(0).steps().get(1).goal());
            assertEquals(3, plan.bands().size());
        }

        /** The books of the trade: every step has frequency, injection, meter point, goal and adjuster. */
        @Test
        void everyStepOfEveryPlanSaysHowToSetUp() throws BadConfiguration {
            for (String name : PlanFiles.SHIPPED) {
                OptionalDouble given = name.equals("am-superhet") ? OptionalDouble.of(455e3) : OptionalDouble.empty();
                for (Stage stage : PlanFiles.load(name, given).stages()) {
                    for (PlanStep step : stage.steps()) {
                        assertAll(
                                name + ", " + step.adjuster(),
                                () -> assertTrue(step.setup().generatorHz().isPresent()),
                                () -> assertTrue(!step.setup().injection().isEmpty()),
                                () -> assertTrue(!step.setup().modulation().isEmpty()),
                                () -> assertTrue(!step.setup().meterPoint().isEmpty()));
                    }
                }
            }
        }

        @Test
        void templateIsAPlan() throws Exception {
            String text = Files.readString(Path.of(System.getProperty("slugpeak.shared"), "plans", "template.toml"));
            assertEquals(2, read(text).stages().size());
        }

        @Test
        void unknownNameListsTheKnownOnes() {
            BadConfiguration bad =
                    assertThrows(BadConfiguration.class, () -> PlanFiles.load("tarnfeld", OptionalDouble.empty()));
            assertTrue(bad.getMessage().contains("tarnfield-54a"), bad.getMessage());
        }
    }

    @Test
    void readsAFile(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("small.toml"), SMALL);
        Plan plan = PlanFiles.load(file.toString(), OptionalDouble.empty());
        assertEquals("Small set", plan.name());
        assertEquals(RepeatRule.USUAL, plan.stages().get(0).repeat());
    }

    @Test
    void stepSaysOtherwiseThanItsStage() throws BadConfiguration {
        Plan plan = read("""
                name = "x"
                if-kHz = 455
                [[stage]]
                name = "s"
                generator-kHz = 600
                inject = "antenna"
                level = [0.2, 1.0]
                seek = "dip"
                notes = ["common"]
                [[stage.step]]
                adjust = "a"
                [[stage.step]]
                adjust = "b"
                generator-kHz = 1400
                inject = "grid"
                level = [10, 20]
                level-unit = "mV"
                seek = "peak"
                accept = "skirts"
                notes = ["own"]
                """);
        PlanStep a = plan.stages().get(0).steps().get(0);
        PlanStep b = plan.stages().get(0).steps().get(1);
        assertEquals(600e3, a.setup().generatorHz().orElseThrow());
        assertEquals("antenna", a.setup().injection());
        assertEquals(Goal.DIP, a.goal());
        assertEquals(List.of("common"), a.notes());
        assertEquals(1400e3, b.setup().generatorHz().orElseThrow());
        assertEquals(new LevelRange(10, 20, "mV"), b.setup().level().orElseThrow());
        assertEquals(Goal.PEAK, b.goal());
        assertEquals(Acceptance.SKIRTS, b.acceptance());
        assertEquals(List.of("own"), b.notes());
    }

    /** 22 kohm over the 254 kohm of a tank of Q 80 and 110 pF leaves 0.56 of the critical coupling. */
    @Test
    void dampingIsWorkedOutFromQAndCoupling() throws BadConfiguration {
        Plan plan = read(SMALL + "damp = \"T1 bottom\"\nq = 80\ncoupling = 2\ntank-pF = 110\n");
        assertEquals(
                22e3,
                plan.stages().get(0).steps().get(0).damping().orElseThrow().ohms(),
                1e-6);
    }

    /** Common practice, no source: primaries stand at high tension, and nobody knows which winding a name means. */
    @Nested
    class HighTensionPoints {

        private PlanStep step(String more) throws BadConfiguration {
            return read(SMALL + more).stages().get(0).steps().get(0);
        }

        @Test
        void areAllThatAPlanDoesNotClear() throws BadConfiguration {
            PlanStep old = step("inject = \"grid\"\ndamp = \"T1 bottom\"\ndamp-ohm = 22000\n");
            assertEquals(new HighTension(true, true), old.setup().highTension());
            assertTrue(old.damping().orElseThrow().highTension());
        }

        @Test
        void areNotWhereThePlanSaysSo() throws BadConfiguration {
            PlanStep step = step(
                    "inject-ht = false\nmeter-ht = false\ndamp = \"T1 bottom\"\ndamp-ohm = 22000\ndamp-ht = false\n");
            assertEquals(new HighTension(false, false), step.setup().highTension());
            assertFalse(step.damping().orElseThrow().highTension());
        }

        @Test
        void areWorkedOutDampingsToo() throws BadConfiguration {
            String workedOut = "damp = \"T1 bottom\"\nq = 80\ncoupling = 2\ntank-pF = 110\n";
            assertTrue(step(workedOut).damping().orElseThrow().highTension());
            assertFalse(step(workedOut + "damp-ht = false\n")
                    .damping()
                    .orElseThrow()
                    .highTension());
        }

        @Test
        void areNotClearedByTheStageForAnotherPointThatAStepNames() throws BadConfiguration {
            List<PlanStep> steps = read("""
                    name = "x"
                    if-kHz = 455
                    [[stage]]
                    name = "s"
                    inject = "antenna"
                    inject-ht = false
                    meter = "detector"
                    meter-ht = false
                    [[stage.step]]
                    adjust = "a"
                    [[stage.step]]
                    adjust = "b"
                    inject = "plate of the IF valve"
                    """).stages().get(0).steps();
            assertEquals(new HighTension(false, false), steps.get(0).setup().highTension());
            assertEquals(new HighTension(true, false), steps.get(1).setup().highTension());
        }
    }

    /** Common practice: over-coupled transformers are judged by their skirts, or damped while they are peaked. */
    @Test
    void anOverCoupledTransformerMayBeJudgedByItsSkirts() throws BadConfiguration {
        Plan plan = read(SMALL + "coupling = 2\naccept = \"skirts\"\n");
        assertEquals(Acceptance.SKIRTS, plan.stages().get(0).steps().get(0).acceptance());
    }

    @Test
    void theTemplateIsAPlan() throws Exception {
        Path template = Path.of(System.getProperty("slugpeak.shared"), "plans", "template.toml");
        assertEquals(
                "My set",
                PlanFiles.load(template.toString(), OptionalDouble.empty()).name());
    }

    @Nested
    class Mistakes {

        @Test
        void areAllTold() {
            List<String> mistakes = mistakesOf("""
                    name = 5
                    chasis = "live"
                    if-kHz = 455
                    [[stage]]
                    name = "IF"
                    generator-kHz = "455"
                    seek = "peek"
                    adjust = ["T1"]
                    """);
            assertEquals(4, mistakes.size(), mistakes::toString);
            assertTrue(mistakes.get(0).startsWith("my.toml:1: 'name' must be text"), mistakes.get(0));
            assertTrue(mistakes.get(1).startsWith("my.toml:2: 'chasis' is not known"), mistakes.get(1));
            assertTrue(mistakes.get(1).contains("did you mean 'chassis'?"), mistakes.get(1));
            assertTrue(mistakes.get(2).startsWith("my.toml:6: 'generator-kHz' must be a number"), mistakes.get(2));
            assertTrue(mistakes.get(3).contains("my.toml:7:") && mistakes.get(3).contains("'peak'"), mistakes.get(3));
        }

        /** Nobody wrote org.tomlj.MutableTomlArray into his plan. */
        @Test
        void ofKindAreToldInWordsAndNotAsAnObject() {
            assertMistake(SMALL.replace("\"Small set\"", "[1, 2]"), "'name' must be text in quotes, not a list");
            assertMistake(SMALL.replace("[0.5, 1.5]", "[]"), "not an empty list");
            assertMistake(
                    SMALL.replace("[0.5, 1.5]", "[\"a\"]"),
                    "'level' must be a number, or numbers in square brackets, not a list");
            assertMistake(SMALL + "seek = { a = 1 }\n", "not a table");
            assertMistake(SMALL + "rock = 1979-05-27\n", "'rock' must be true or false, not 1979-05-27");
        }

        @Test
        void ofWriting() {
            assertMistake("name = \"x\n", "my.toml:1:");
            assertMistake(SMALL + "adjust = [\"again\"]\n", "my.toml:8:");
        }

        @Test
        void ofMeaning() {
            assertMistake("name = \"x\"\n", "at least one [[stage]]");
            assertMistake("name = \"x\"\n[[stage]]\nname = \"s\"\n", "my.toml:2: a stage needs adjusters");
            assertMistake(SMALL.replace("[0.5, 1.5]", "[1.5, 0.5]"), "my.toml:6: 'level' must be two numbers");
            assertMistake(SMALL.replace("if-kHz = 455", "if-kHz = [455, 10700]"), "\"IF\" is clear only");
            assertMistake(SMALL.replace("if-kHz = 455", "if-kHz = -455"), "my.toml:2: 'if-kHz' must be above zero");
            assertMistake(SMALL + "damp = \"T1 top\"\n", "my.toml:8: 'damp' needs 'damp-ohm'");
            assertMistake(SMALL + "damp-ohm = 22000\n", "my.toml:8: 'damp-ohm' says nothing without 'damp'");
            assertMistake(SMALL + "damp-ht = false\n", "my.toml:8: 'damp-ht' says nothing without 'damp'");
            assertMistake(SMALL + "coupling = 2\n", "my.toml:8: this transformer is over-coupled");
            assertMistake(SMALL + "accept = \"curve\"\n", "known here: maximum, skirts");
            assertMistake(SMALL + "most-rounds = 0\n", "my.toml:8: 'most-rounds' must be a whole number from 1");
            assertMistake(SMALL + "repeat-below-dB = -1\n", "greater than 0, not -1.0");
            assertMistake(SMALL + "[[band]]\nname = \"MW\"\nfrom-kHz = 5\nto-kHz = 2\n", "the lower first");
            assertMistake(SMALL + "[[stage.step]]\nseek = \"dip\"\n", "'adjust' is missing");
        }

        @Test
        void intermediateFrequencyOfAnotherSet() {
            BadConfiguration bad = assertThrows(
                    BadConfiguration.class, () -> PlanFiles.load("tarnfield-54a", OptionalDouble.of(465e3)));
            assertTrue(bad.getMessage().contains("its own intermediate frequency"), bad.getMessage());
        }
    }
}
