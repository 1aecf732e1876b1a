package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleCommandTest {

    private static final String THREE = "generator --point 400:397.2 --point 450:452.6 --point 500:503.1";

    private static CommandRun ask(String commandLine) {
        return CommandRun.of(new ScaleCommand(), commandLine.split(" "));
    }

    private static void assertSays(String commandLine, String part) {
        CommandRun run = ask(commandLine);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().replaceAll(" +", " ").contains(part), run.out());
    }

    @Test
    void decimalCommasAreReadWhereTheyCanMeanNothingElseOrWhereToldSo() {
        String dial = " --dial 450";
        String points = ask(THREE + dial).out();
        assertEquals(points, ask(THREE.replace('.', ',') + dial).out());
        assertEquals(
                points, ask(THREE.replace('.', ',') + dial + " --decimal-comma").out());
        assertSays("generator --point 1,234:1,230 --point 2:2 --decimal-comma --dial 2", "gives 2.00 kHz");
        assertSays(THREE.replace('.', ',') + " --get 455,5;460 --decimal-comma", "to get 455.50 kHz");
        assertSays(THREE.replace('.', ',') + " --dial 450;455,5 --decimal-comma", "dial 455.50 kHz gives");
        assertSays("generator --beat 1000,5:999,5:120Hz:high --point 400:399 --dial 400", "gives 399.00 kHz");
        assertSays("receiver --point 582,5:600,5 --point 1016:1000 --point 1438:1400", "582.50 600.50");
    }

    @Test
    void tellsWhatToSetTheDialTo() {
        assertSays(
                THREE + " --get 455 --known-to 0.1",
                "set the dial to 452.38 kHz to get 455.00 kHz (+- 0.51 kHz, one sigma; a bend of the scale may add");
    }

    @Test
    void tellsWhatADialSettingGives() {
        assertSays(THREE + " --dial 455", "dial 455.00 kHz gives 457.65 kHz");
    }

    @Test
    void printsACorrectionTable() {
        assertSays(THREE + " --table 10", " 410.00 408.28 -1.72 ");
        assertSays(THREE + " --table 10", " 500.00 503.10 +3.10 ");
    }

    @Test
    void takesBeats() {
        assertSays(
                "generator --beat 1000:999:120Hz:high --beat 455:910:300Hz:low:2 --dial 455",
                "dial 455.00 kHz gives 454.85 kHz");
        assertSays("generator --beat 1000:999:0:low --point 455:455 --dial 1000", "gives 999.00 kHz");
    }

    @Test
    void keepsPointsForTheNextTime(@TempDir Path folder) {
        Path file = folder.resolve("generator.csv");
        assertEquals(0, ask(THREE + " --save " + file).exitCode());
        assertSays("generator --points " + file + " --dial 455", "dial 455.00 kHz gives 457.65 kHz");
    }

    @Test
    void saysWhichAdjusterAndWhichWay() {
        String table = "receiver --point 582:600 --point 1016:1000 --point 1438:1400";
        assertSays(table, "oscillator trimmer: less capacitance");
        assertSays(table, "padder: more capacitance");
        assertSays(table, "582.00 600.00 -18.00 kHz -3.00 %");
        assertSays(table + " --low-end slug", "oscillator slug: more inductance, slug in");
    }

    @Test
    void leavesARightDialAlone() {
        assertSays("receiver --point 601:600 --point 1000:1000 --point 1402:1400", "leave the oscillator alone");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "generator --point 400:397.2 | two known points",
                "generator --point 400:397 --point 500:503 --get 600 | outside the known points",
                "generator --point 400:397 --point 500:503 --dial 390 | outside the known points",
                "generator --point 400:397 --point 500:250 | harmonic",
                "generator --point 400 | is no point",
                "generator --point 1,234:1,230 --point 2:3 | '1,234' may be 1234, or 1.234 with a decimal comma",
                "generator --decimal-comma --point 400:397.2 --point 2:3 | '397.2' has a point, but --decimal-comma",
                "generator --point 400:399 --point 500:498 --get 455,x | --get: 'x' is no frequency",
                "generator --decimal-comma --point 400:399 --point 500:498 --get 455.5 | '455.5' has a point",
                "generator --beat 1,234:1230:120Hz:high --point 400:399 | '1,234' may be 1234, or 1.234",
                "generator --beat 1000:999:120:high --point 400:399 | cannot be heard",
                "generator --beat 1000:999:120Hz:up --point 400:399 | neither high nor low",
                "generator --beat 1000:999 --point 400:399 | is no beat",
                "receiver --point 582:600 | three points",
                "receiver --point 582:600 --point 1016:1000 --point 1438:1400 --tolerance 50 | at most 5",
                "receiver --point 582:600 --point 1016:1000 --point 1438:1400 --low-end knob | padder"
            })
    void refusesWithALineThatSaysWhy(String commandLine, String why) {
        CommandRun run = ask(commandLine);
        assertEquals(2, run.exitCode());
        assertTrue(run.err().toLowerCase(java.util.Locale.ROOT).contains(why), run.err());
    }

    private static final String OFF = "receiver --if 455 --point 582:600 --point 1016:1000 --point 1438:1400";
    private static final String RIGHT = "receiver --if 455 --point 600:600 --point 1001:1000 --point 1400:1400";

    @Test
    void dialErrorsBeforeAndAfterTheWorkStandSideBySideInEveryReport(@TempDir Path folder) throws Exception {
        Path before = folder.resolve("before.jsonl");
        Path after = folder.resolve("after.jsonl");
        assertEquals(0, ask(OFF + " --log " + before).exitCode());
        assertEquals(0, ask(RIGHT + " --after --log " + after).exitCode());
        String markdown = report(before, after, "--markdown").out();
        assertTrue(markdown.contains("| 600 kHz | -18.0 kHz (-3.00 %) | +0.0 kHz (+0.00 %) |"), markdown);
        assertTrue(markdown.contains("| 1400 kHz | +38.0 kHz (+2.71 %) | +0.0 kHz (+0.00 %) |"), markdown);
        assertEquals(0, report(before, after).exitCode());
        String page = Files.readString(folder.resolve("before.html"));
        assertTrue(page.contains("<td>+16.0 kHz (+1.60 %)</td><td>+1.0 kHz (+0.10 %)</td>"), page);
        String csv = report(before, after, "--csv").out();
        assertTrue(csv.startsWith("signalHz,dialErrorHz,when,session\n600000.0,-18000.0,before,before.jsonl\n"), csv);
        assertTrue(csv.contains("\n1000000.0,1000.0,after,after.jsonl\n"), csv);
    }

    @Test
    void aLogIsNeverOverwrittenAndAfterNeedsOne(@TempDir Path folder) {
        Path log = folder.resolve("dial.jsonl");
        assertEquals(0, ask(OFF + " --log " + log).exitCode());
        assertEquals(1, ask(OFF + " --log " + log).exitCode());
        assertEquals(2, ask(OFF + " --after").exitCode());
    }

    private static CommandRun report(Object... args) {
        return CommandRun.of(
                new ReportCommand(), Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    }
}
