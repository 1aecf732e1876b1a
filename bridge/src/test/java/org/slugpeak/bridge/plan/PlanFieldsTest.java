package org.slugpeak.bridge.plan;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.AvcLine;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Response;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

/** The fields that only some plans need: read as they are meant, refused with their line where they mean nothing. */
class PlanFieldsTest {

    /** Each line is one that a test may change; their numbers stand in the messages. */
    private static final String PLAN = """
            name = "x"
            if-kHz = { first = 1600, second = 455 }
            [[band]]
            name = "SW"
            from-kHz = 6000
            to-kHz = 18000
            oscillator = "above"
            tuning = "permeability"
            [[stage]]
            name = "s"
            if = "first"
            band = "SW"
            generator-kHz = 16000
            dial-kHz = 16000
            meter = "detector load"
            meter-point = "detector"
            seek = "on-dial"
            accept = "skirts"
            skirts-kHz = 4
            span-kHz = 20
            prove-image = true
            adjust = ["C5"]
            """;

    private static Plan read(String text) throws BadConfiguration {
        return new PlanReader("my.toml", OptionalDouble.empty()).read(text);
    }

    private static PlanStep step(String text) throws BadConfiguration {
        return read(text).stages().get(0).steps().get(0);
    }

    private static Particulars particulars(String text) throws BadConfiguration {
        return step(text).setup().particulars();
    }

    private static String mistakesOf(String text) {
        return assertThrows(BadConfiguration.class, () -> read(text)).getMessage();
    }

    private static void assertMistake(UnaryOperator<String> slip, String mistake) {
        String found = mistakesOf(slip.apply(PLAN));
        assertTrue(found.lines().anyMatch(line -> line.contains(mistake)), found);
    }

    @Test
    void areReadAsTheyAreMeant() throws BadConfiguration {
        Plan plan = read(PLAN);
        PlanStep step = plan.stages().get(0).steps().get(0);
        IntermediateFrequency first = new IntermediateFrequency("first", 1600e3);
        assertAll(
                () -> assertEquals(
                        first, step.setup().particulars().intermediate().orElseThrow()),
                () -> assertEquals(2, plan.intermediates().size()),
                () -> assertEquals(OscillatorSide.ABOVE, step.oscillator().orElseThrow()),
                () -> assertEquals(
                        TuningElement.PERMEABILITY,
                        step.setup().particulars().band().orElseThrow().tuning()),
                () -> assertEquals(
                        Optional.of(MeterPoint.DETECTOR),
                        step.setup().particulars().point()),
                () -> assertTrue(step.provesImage()),
                () -> assertEquals(
                        new Response(OptionalDouble.of(4e3), OptionalDouble.of(20e3)),
                        plan.stages().get(0).response()),
                () -> assertEquals(Optional.empty(), step.setup().particulars().avc()));
    }

    /** Terman, Radio Engineers' Handbook, 1943, section 9: the image lies twice the intermediate frequency away. */
    @ParameterizedTest
    @CsvSource({"above, 16000, 12800", "below, 12000, 15200"})
    void theImageIsMetOnTheSideThatTheOscillatorSays(String side, String generator, double imageKilohertz)
            throws BadConfiguration {
        String text = PLAN.replace("\"above\"", "\"" + side + "\"").replace("16000", generator);
        assertEquals(imageKilohertz * 1e3, step(text).imageDialHz().orElseThrow(), 1e-6);
    }

    @Nested
    class Frequencies {

        @Test
        void ofTheGeneratorAreThoseOfTheNamedIntermediate() throws BadConfiguration {
            String text = PLAN.replace("if = \"first\"", "if = \"second\"")
                    .replace("generator-kHz = 16000", "generator-kHz = \"IF\"")
                    .replace("prove-image = true\n", "");
            assertEquals(455e3, step(text).setup().generatorHz().orElseThrow());
        }

        @Test
        void mayBeMeasuredAndAStepWithItsOwnIsNot() throws BadConfiguration {
            String text = PLAN.replace("band = \"SW\"\n", "band = \"SW\"\ngenerator-measured = true\n")
                    + "[[stage.step]]\nadjust = \"C6\"\ngenerator-kHz = 15000\n";
            assertTrue(particulars(text).generatorMeasured());
            Particulars other =
                    read(text).stages().get(0).steps().get(1).setup().particulars();
            assertEquals(false, other.generatorMeasured());
        }

        @Test
        void thatCannotBeAreRefused() {
            assertMistake(
                    it -> it.replace("second = 455", "second = -455"), "my.toml:2: 'second' must be greater than 0");
            assertMistake(it -> it.replace("{ first = 1600, second = 455 }", "{}"), "my.toml:2: 'if-kHz' names no");
            assertMistake(
                    it -> it.replace("if = \"first\"", "if = \"third\""), "my.toml:11: 'third' is not known for 'if'");
            assertMistake(it -> it.replace("if = \"first\"", "if = \"zzzzzzz\""), "known here: first, second");
            assertMistake(
                    it -> it.replace("{ first = 1600, second = 455 }", "455"),
                    "my.toml:11: this plan names no intermediate");
            assertMistake(
                    it -> it.replace("generator-kHz = 16000", "generator-measured = true")
                            .replace("prove-image = true\n", ""),
                    "my.toml:13: 'generator-measured' needs 'generator-kHz'");
            assertMistake(
                    it -> it.replace("generator-kHz = 16000\n", "").replace("on-dial", "crystal"),
                    "my.toml:16: seek = \"crystal\" needs 'generator-kHz'");
        }
    }

    @Nested
    class Bands {

        @Test
        void ofWhichNothingIsSaidLeaveTheOscillatorOpen() throws BadConfiguration {
            String text = PLAN.replace("oscillator = \"above\"\ntuning = \"permeability\"\n", "")
                    .replace("prove-image = true\n", "");
            assertEquals(Optional.empty(), step(text).oscillator());
            assertEquals(OptionalDouble.empty(), step(text).imageDialHz());
            assertEquals(
                    TuningElement.CAPACITOR,
                    particulars(text).band().orElseThrow().tuning());
        }

        @Test
        void thatCannotBeAreRefused() {
            assertMistake(
                    it -> it.replace("band = \"SW\"", "band = \"MW\""),
                    "my.toml:12: 'MW' is not known for 'band'; did you");
            assertMistake(it -> it.replace("\"above\"", "\"over\""), "my.toml:7: 'over' is not known for 'oscillator'");
            assertMistake(it -> it.replace("\"permeability\"", "\"zzzzzzzz\""), "known here: capacitor, permeability");
            assertMistake(
                    it -> it.replace("dial-kHz = 16000", "dial-kHz = 1600"),
                    "my.toml:14: the dial stands at 1600 kHz, outside band SW, 6000 to 18000 kHz");
            assertTrue(mistakesOf("name = \"x\"\n[[stage]]\nname = \"s\"\nband = \"MW\"\nadjust = [\"T1\"]\n")
                    .contains("my.toml:4: this plan has no [[band]]"));
        }
    }

    @Nested
    class Meters {

        @ParameterizedTest
        @EnumSource(MeterPoint.class)
        void haveAWordForEachPoint(MeterPoint point) throws BadConfiguration {
            assertEquals(
                    Optional.of(point),
                    particulars(PLAN.replace("\"detector\"", "\"" + point.code() + "\""))
                            .point());
        }

        @Test
        void haveTheWindowOfTheirStageOnlyAtItsPoint() throws BadConfiguration {
            String text = PLAN.replace("adjust =", "level = [0.5, 1.5]\nadjust =")
                    + "[[stage.step]]\nadjust = \"a\"\nmeter-point = \"detector\"\n"
                    + "[[stage.step]]\nadjust = \"b\"\nmeter-point = \"voice-coil\"\n";
            List<PlanStep> steps = read(text).stages().get(0).steps();
            assertTrue(steps.get(0).setup().level().isPresent());
            assertTrue(steps.get(1).setup().level().isPresent());
            assertTrue(steps.get(2).setup().level().isEmpty());
        }

        @Test
        void thatCannotBeAreRefused() {
            assertMistake(
                    it -> it.replace("\"detector\"", "\"zzzzzzzzzzz\""), "known here: avc, detector, discriminator");
            assertMistake(
                    it -> it + "[[stage.step]]\nadjust = \"C6\"\nmeter = \"grid\"\n",
                    "my.toml:25: 'meter-point' is said of other steps");
            assertMistake(
                    it -> it.replace("on-dial", "zero-beat").replace("prove-image = true\n", ""),
                    "my.toml:17: a zero beat is read as sound");
        }
    }

    @Nested
    class TheGainControlLine {

        private String held(String volts) {
            return PLAN.replace("adjust =", "avc-clamp-V = " + volts + "\nadjust =");
        }

        @Test
        void isHeldWhereTheStepSaysAndFreeEverywhereElse() throws BadConfiguration {
            String text = held("-3") + "[[stage]]\nname = \"t\"\nmeter-point = \"detector\"\nadjust = [\"C6\"]\n";
            assertEquals(Optional.of(AvcLine.heldAt(-3)), particulars(text).avc());
            assertEquals(
                    Optional.of(AvcLine.FREE),
                    read(text)
                            .stages()
                            .get(1)
                            .steps()
                            .get(0)
                            .setup()
                            .particulars()
                            .avc());
        }

        @ParameterizedTest
        @CsvSource({"3, not 3", "-60, from -50 to 0"})
        void isNotHeldWhereNoSetHasIt(String volts, String mistake) {
            String found = mistakesOf(held(volts));
            assertTrue(found.contains("my.toml:22: 'avc-clamp-V' must be") && found.contains(mistake), found);
        }

        @Test
        void isNotReadWhileItIsHeld() {
            String found = mistakesOf(held("-3").replace("\"detector\"", "\"avc\""));
            assertTrue(found.contains("my.toml:22: the meter reads the AVC line"), found);
        }
    }

    @Nested
    class Goals {

        @ParameterizedTest
        @EnumSource(Goal.class)
        void haveAWordEach(Goal goal) throws BadConfiguration {
            String text = PLAN.replace("on-dial", goal.code())
                    .replace("prove-image = true\n", "")
                    .replace("\"detector\"", "\"voice-coil\"");
            assertEquals(goal, step(text).goal());
        }

        @ParameterizedTest
        @CsvSource({"zero-beat", "crystal"})
        void thatNeedNoGangAreNotRocked(String goal) {
            String found = mistakesOf(PLAN.replace("on-dial", goal).replace("prove-image = true", "rock = true"));
            assertTrue(found.contains("my.toml:21: nothing is rocked where seek is \"" + goal), found);
        }
    }

    @Nested
    class Proofs {

        @Test
        void thatCannotBeMadeAreRefused() {
            assertMistake(
                    it -> it.replace("= 16000", "= 9000"),
                    "my.toml:21: the image would be met at 5800 kHz, outside band SW, 6000 to 18000 kHz");
            assertMistake(it -> it.replace("oscillator = \"above\"\n", ""), "my.toml:20: 'prove-image' needs");
            assertMistake(it -> it.replace("if = \"first\"\n", ""), "my.toml:20: 'prove-image' needs");
            assertMistake(it -> it.replace("on-dial", "dip"), "my.toml:21: 'prove-image' proves a maximum");
            assertMistake(it -> it.replace("= true", "= 1"), "my.toml:21: 'prove-image' must be true or false");
        }

        @Test
        void bySkirtsNeedSkirts() {
            assertMistake(it -> it.replace("accept = \"skirts\"\n", ""), "my.toml:18: 'skirts-kHz' says nothing");
            assertMistake(
                    it -> it.replace("span-kHz = 20", "span-kHz = 7"),
                    "my.toml:20: 'span-kHz' must hold both skirts: at least 8, not 7");
            assertMistake(
                    it -> it.replace("skirts-kHz = 4", "skirts-kHz = 0"),
                    "my.toml:19: 'skirts-kHz' must be greater than 0");
        }
    }

    /** Nobody writes such numbers, but a slip of the finger may: a line says so, or the plan is read. */
    @ParameterizedTest
    @CsvSource({"1600", "455", "6000", "18000", "16000", "4", "20"})
    void numbersThatAreNoFrequenciesEndInNothingWorseThanALine(String number) {
        for (String absurd : new String[] {"1e306", "1e-320", "inf", "nan", "-0.0"}) {
            String text = PLAN.replace("= " + number + "\n", "= " + absurd + "\n")
                    .replace("= " + number + " ", "= " + absurd + " ")
                    .replace("= " + number + ",", "= " + absurd + ",");
            try {
                read(text);
            } catch (BadConfiguration bad) {
                assertTrue(bad.getMessage().startsWith("my.toml:"), bad.getMessage());
            }
        }
    }

    /** No field without its place on the page of the format, and in the file that everybody copies. */
    @Nested
    class Documented {

        private static Set<String> knownIn(String table) {
            String unknown = "zzzzzzzzzzzzzzzzzzzz = 1\n";
            String text = switch (table) {
                case "top" -> "if-kHz = 455\nname = \"x\"\n" + unknown;
                case "band" -> "name = \"x\"\n[[band]]\nname = \"MW\"\n" + unknown;
                default -> "name = \"x\"\n[[stage]]\nname = \"s\"\nadjust = [\"T1\"]\ndamp = \"T2\"\n" + unknown;
            };
            String all = mistakesOf(text)
                    .lines()
                    .filter(line -> line.contains("known here: "))
                    .findFirst()
                    .orElseThrow();
            return new TreeSet<>(Arrays.asList(
                    all.substring(all.indexOf("known here: ") + 12).split(", ")));
        }

        @ParameterizedTest
        @CsvSource({"top, 7", "band, 5", "stage, 34"})
        void isEachFieldOnThePageAndInTheTemplate(String table, int least) throws IOException {
            Path shared = Path.of(System.getProperty("slugpeak.shared"));
            String page = Files.readString(shared.resolve("../docs/plans.md"));
            String template = Files.readString(shared.resolve("plans/template.toml"));
            Set<String> known = knownIn(table);
            assertTrue(known.size() >= least, known.toString());
            for (String field : known) {
                boolean isTable = Set.of("band", "stage", "step").contains(field);
                assertTrue(page.contains("`" + field + "`") || (isTable && page.contains(field + "]]`")), field);
                assertTrue(
                        template.matches("(?s).*[\\n#] ?" + field + " = .*") || template.contains(field + "]]"), field);
            }
        }

        @Test
        void isEachWordOnThePage() throws IOException {
            String page = Files.readString(Path.of(System.getProperty("slugpeak.shared"), "../docs/plans.md"));
            for (Set<String> words : Set.of(
                    Words.GOALS.keySet(),
                    Words.POINTS.keySet(),
                    Words.SIDES.keySet(),
                    Words.TUNINGS.keySet(),
                    Words.CHASSIS.keySet(),
                    Words.ACCEPTANCES.keySet())) {
                words.forEach(word -> assertTrue(page.contains("`" + word + "`"), word));
            }
        }
    }
}
