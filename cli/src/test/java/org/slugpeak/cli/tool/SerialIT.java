package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** The packaged tool at one end of a pseudo-terminal, a meter or a board at the other. */
@EnabledOnOs(OS.LINUX)
final class SerialIT {

    /** Boards send no faster than their own clock says: what a burst would mean is tested elsewhere. */
    private static final int PAUSE_MILLIS = 5;

    @TempDir
    private Path folder;

    private BenchPort port;

    @BeforeEach
    void makeThePort() {
        port = BenchPort.in(folder);
    }

    @AfterEach
    void clearTheBench() {
        port.close();
    }

    @Test
    void aScpiMeterIsAskedForItsNameAndRead() throws IOException, InterruptedException {
        ScpiResponder meter = ScpiResponder.reading("+1.25000000E+00");
        port.plug(meter);
        try (PackagedTool tool = watch("--json")) {
            assertTrue(tool.lineWith("\"type\":\"session\"").contains("\"unit\":\"V\""));
            assertTrue(tool.lineWith("\"type\":\"reading\"").contains("\"value\":1.25"));
            tool.signal("INT");
            assertEquals(130, tool.finish().exitCode());
        }
        meter.awaitMessage("SYSTem:LOCal");
    }

    @Test
    void aMeterThatAnswersOnlyOneQuestionIsReadAllTheSame() throws IOException, InterruptedException {
        port.plug(ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-12,0,0")
                .answering("MEASure:VOLTage:DC?", "9.9E37", "0.5")));
        try (PackagedTool tool = watch("--json", "--meter", "generic-scpi")) {
            tool.lineWith("\"condition\":\"over-range\"");
            tool.lineWith("\"value\":0.5");
        }
    }

    @Test
    void pulledOutAndPutBackItSaysSoKeepsTheBestAndGoesOn() throws IOException, InterruptedException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (PackagedTool tool = watch("--json", "--meter", "value-and-time", "--log", log().toString())) {
            board.awaitOpened();
            int row = 0;
            for (; row < 200; row++) {
                board.play(List.of(reading(row, 1 / Math.sqrt(1 + Math.pow((row - 100) / 60.0, 2)))), PAUSE_MILLIS);
            }
            tool.lineWith("\"type\":\"passed\"");
            port.unplug();
            tool.lineWith("\"state\":\"lost\"");
            LineAdc again = LineAdc.silent();
            port.plug(again);
            again.awaitOpened();
            for (int more = 0; more < 20; more++) {
                again.play(List.of(reading(row++, 0.5)), PAUSE_MILLIS);
            }
            tool.lineWith("\"state\":\"resumed\"");
            String reading = tool.lineWith("\"value\":0.5");
            double best = Double.parseDouble(reading.replaceAll(".*\"best\":([0-9.]+).*", "$1"));
            assertEquals(1, best, 0.01, "the best outlives the plug");
            tool.signal("INT");
            assertEquals(130, tool.finish().exitCode());
        }
        assertTrue(Files.readString(log()).contains("\"type\":\"end\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM", "HUP"})
    void toldToStopItClosesTheLogAndGivesTheMeterItsKeysBack(String signal) throws IOException, InterruptedException {
        ScpiResponder meter = ScpiResponder.reading("+1.25000000E+00");
        port.plug(meter);
        try (PackagedTool tool = watch("--json", "--log", log().toString())) {
            tool.lineWith("\"type\":\"reading\"");
            tool.signal(signal);
            assertEquals(130, tool.finish().exitCode());
        }
        meter.awaitMessage("SYSTem:LOCal");
        String end = lastLine(log());
        assertTrue(end.contains("\"type\":\"end\""), end);
        assertTrue(end.contains(signal.equals("HUP") ? "terminal closed" : "interrupted"), end);
    }

    /** A meter that says its name, is set to remote, and then answers no question for a reading. */
    private static ScpiResponder meterWithoutReadings() {
        return ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-450,0,1.07"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM", "HUP"})
    void toldToStopWhileItSearchesItGivesTheMeterItsKeysBack(String signal) throws IOException, InterruptedException {
        ScpiResponder meter = meterWithoutReadings();
        port.plug(meter);
        try (PackagedTool tool = watch("--json", "--baud", "9600")) {
            meter.awaitMessage("SYSTem:REMote");
            tool.signal(signal);
            Result result = tool.finish();
            assertEquals(130, result.exitCode(), result.errors());
            assertEquals("", result.errors());
        }
        meter.awaitMessage("SYSTem:LOCal");
    }

    @Test
    void aMeterThatIsNotUnderstoodGetsItsKeysBack() throws IOException, InterruptedException {
        ScpiResponder meter = meterWithoutReadings();
        port.plug(meter);
        try (PackagedTool tool = watch("--json", "--baud", "9600")) {
            Result result = tool.finish();
            assertEquals(1, result.exitCode(), result.errors());
            assertTrue(
                    result.errors()
                            .contains("answers none of READ?, FETCh?, MEASure:VOLTage:DC? (-113 Undefined header)"),
                    result.errors());
            assertTrue(result.errors().contains("describe it (--meter FILE.toml, see template.toml)"), result.errors());
        }
        meter.awaitMessage("SYSTem:LOCal");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "watch --json",
                "align tarnfield-54a --decline bench-test",
                "curve --span 450..460",
            })
    void aMeterWhoseLogIsRefusedGetsItsKeysBack(String command) throws IOException, InterruptedException {
        ScpiResponder meter = ScpiResponder.reading("+1.25000000E+00");
        port.plug(meter);
        Files.writeString(log(), "precious");
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.addAll(List.of("--from", port.path(), "--log", log().toString()));
        try (PackagedTool tool = PackagedTool.start(folder, words.toArray(String[]::new))) {
            assertEquals(1, tool.finish().exitCode());
        }
        meter.awaitMessage("SYSTem:LOCal");
        assertEquals("precious", Files.readString(log()));
    }

    @Test
    void whatAnInstrumentSendsIsNeverObeyedByTheTerminal() throws IOException, InterruptedException {
        port.plug(ScpiResponder.of(
                ScpiMeter.identifiedAs("EVIL\u009b31m,BM\u0085,0,0").answering("READ?", "1.5", "x\u009b2J")));
        try (PackagedTool tool = watch("--json", "--meter", "generic-scpi")) {
            String said = tool.lineWith("not-a-reading");
            assertTrue(said.chars().noneMatch(each -> each >= 0x7F && each < 0xA0), said);
        }
    }

    private static String lastLine(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        return lines.get(lines.size() - 1);
    }

    @Test
    void garbageOnTheLineIsCountedAndNeverAReading() throws IOException, InterruptedException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (PackagedTool tool = watch("--json", "--meter", "generic-line", "--baud", "115200")) {
            board.awaitOpened();
            board.print("0.125");
            board.print("0.25");
            tool.lineWith("\"value\":0.25");
            board.send(new byte[] {(byte) 0x80, (byte) 0xFE, 0, 0, (byte) 0xF8, '\n'});
            board.print("volts?");
            board.print("0.5");
            assertTrue(tool.lineWith("\"type\":\"advice\"").contains("not-a-reading"));
            tool.lineWith("\"value\":0.5");
        }
    }

    @Test
    void eachTroubleWithAPortIsOneLineThatSaysWhatToDo() throws IOException, InterruptedException {
        Path description = Files.writeString(folder.resolve("mine.toml"), "nonsense = 1\n");
        Path plainFile = Files.writeString(folder.resolve("plain"), "not a port");
        port.plug(LineAdc.silent());
        assertAll(
                () -> assertOneLine(
                        "there is no port",
                        "watch",
                        "--from",
                        folder.resolve("nowhere").toString()),
                () -> assertOneLine("holds no readings", "watch", "--from", plainFile.toString()),
                () -> assertOneLine("mine.toml", "watch", "--from", port.path(), "--meter", description.toString()));
    }

    @Test
    void checkReportsRateNoiseAndResolution() throws IOException, InterruptedException {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        try (PackagedTool tool = PackagedTool.start(
                folder, "check", "--from", port.path(), "--meter", "value-and-time", "--seconds", "1")) {
            board.awaitOpened();
            for (int row = 0; row < 100; row++) {
                board.play(List.of(reading(row, row % 2 == 0 ? 0.501 : 0.5)), PAUSE_MILLIS);
            }
            Result result = tool.finish();
            String report = String.join("\n", result.output());
            assertEquals(0, result.exitCode(), result.errors());
            assertTrue(
                    report.matches("(?s).*readings +(99|100)\\n.*"),
                    "the first line may have been cut by the start: " + report);
            assertTrue(report.matches("(?s).*rate +200(\\.0+)? a second.*"), report);
            assertTrue(report.matches("(?s).*resolution +0\\.001.*"), report);
        }
    }

    private void assertOneLine(String what, String... args) throws IOException, InterruptedException {
        Result result = PackagedTool.run(folder, args);
        assertEquals(1, result.exitCode(), result.errors());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains(what), result.errors());
    }

    private PackagedTool watch(String... args) throws IOException {
        String[] all = new String[args.length + 3];
        all[0] = "watch";
        all[1] = "--from";
        all[2] = port.path();
        System.arraycopy(args, 0, all, 3, args.length);
        return PackagedTool.start(folder, all);
    }

    private Path log() {
        return folder.resolve("session.jsonl");
    }

    private static String reading(int row, double volts) {
        return String.format(Locale.ROOT, "%d,%.6f", row * PAUSE_MILLIS, volts);
    }
}
