package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.testkit.PseudoTerminal;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** What somebody gets who gives one settled value for each step of a turn. */
final class StepsIT {

    private static final String TURN = "0.62\n0.71\n0.80\n0.87\n0.86\n0.80\n0.86\n0.88\n";
    private static final int WAIT_MILLIS = 100;

    @TempDir
    private Path folder;

    /** Falls of 0.07 and 0.01 on either side of 0.87: 1 - 0.06 / 0.16 steps back. */
    @Test
    void aPipeIsToldThePassHowFarBackTheTopIsAndTheReturn() throws IOException, InterruptedException {
        Result result = PackagedTool.runWithInput(folder, TURN, "watch", "--from", "-", "--steps");
        assertEquals(0, result.exitCode(), result.errors());
        List<String> said =
                result.output().stream().filter(line -> line.contains("*")).toList();
        assertAll(
                () -> assertTrue(
                        said.get(2)
                                .startsWith(
                                        "step    5  * past it: back 0.6 steps (+-0.1), 0.1 dB; the peak is 0.8756 (+-0.00"),
                        said.toString()),
                () -> assertEquals("step    6  * still further past it: back 1.6 steps (+-0.1)", said.get(3)),
                () -> assertEquals("step    8  * on the peak: stop", said.get(4)),
                () -> assertTrue(
                        result.output().contains("step    6  0.800  0.73 dB below best 0.870  falling"),
                        result.output().toString()));
    }

    @Test
    void aLogOfStepsWithAMistakeTakenBackReplaysWithTheSameRecords() throws IOException, InterruptedException {
        Path log = folder.resolve("steps.jsonl");
        Result live = PackagedTool.runWithInput(
                folder,
                "0.62\n0.71\n7.9\nu\n0.80\nOL\nu\n0.87\nrubbish\n0.86\n0.88\nr\n0.5\n0.6\n0.4\n",
                "watch",
                "--from",
                "-",
                "--steps",
                "--json",
                "--log",
                log.toString());
        Result replayed = PackagedTool.run(folder, "replay", log.toString(), "--json");
        assertAll(
                () -> assertEquals(0, replayed.exitCode(), replayed.errors()),
                () -> assertTrue(
                        live.output().get(0).contains("\"stepped\":true"),
                        live.output().get(0)),
                () -> assertEquals(2, count(live, "passed"), live.output().toString()),
                () -> assertEquals(1, count(live, "held"), live.output().toString()),
                () -> assertTrue(live.errors().contains("'rubbish' is not a number"), live.errors()),
                () -> assertEquals(live.output(), Files.readAllLines(log)),
                () -> assertEquals(withoutMistakes(live.output()), replayed.output()));
    }

    /** What was no reading is told live only, as for every log. */
    private static List<String> withoutMistakes(List<String> lines) {
        return lines.stream().filter(line -> !line.contains("not-a-reading")).toList();
    }

    @Test
    void aFileOfStepsIsTakenTheSameWay() throws IOException, InterruptedException {
        Path csv = Files.writeString(folder.resolve("steps.csv"), "volts\n" + TURN);
        Result watched = PackagedTool.run(folder, "watch", "--from", csv.toString(), "--steps", "--json");
        Result replayed = PackagedTool.run(folder, "replay", csv.toString(), "--steps", "--json");
        assertAll(
                () -> assertEquals(1, count(watched, "passed"), watched.output().toString()),
                () -> assertEquals(
                        watched.output().subList(1, watched.output().size()),
                        replayed.output().subList(1, replayed.output().size())));
    }

    @Test
    void aWordOfAnotherKindOfSessionIsRefused() throws IOException, InterruptedException {
        Result serial = PackagedTool.run(folder, "watch", "--from", "sim", "--steps");
        Result point = PackagedTool.run(folder, "watch", "--from", "-", "--steps", "--point", "detector");
        assertAll(
                () -> assertEquals(2, serial.exitCode()),
                () -> assertTrue(serial.errors().contains("--steps is for readings as text"), serial.errors()),
                () -> assertEquals(2, point.exitCode()),
                () -> assertTrue(point.errors().contains("--point"), point.errors()));
    }

    @Test
    void aStreamAsSlowAsAHandThatTypesIsToldOnceThatThereAreSteps() throws IOException, InterruptedException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 18; i++) {
            text.append(i).append(",0.").append(50 + i).append('\n');
        }
        Result result = PackagedTool.runWithInput(folder, text.toString(), "watch", "--from", "-");
        assertEquals(
                1,
                result.output().stream()
                        .filter(line -> line.contains("--steps"))
                        .count(),
                result.output().toString());
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void aPersonAtATerminalIsAskedForEachValue() throws IOException, InterruptedException {
        try (PseudoTerminal terminal = PseudoTerminal.open()) {
            Process tool = atTerminal(terminal, "watch", "--from", "-", "--cue", "off");
            StringBuilder seen = new StringBuilder();
            for (String typed : List.of("0.80\n", "0.87\n", "0.9\n", "u\n", "what\n", "0.86\n", "q\n")) {
                readUntil(terminal, seen, "value> ");
                terminal.write(typed.getBytes(StandardCharsets.US_ASCII));
            }
            readUntil(terminal, seen, "end, 4 readings: quit");
            tool.waitFor();
            String all = seen.toString();
            assertAll(
                    () -> assertEquals(0, tool.exitValue()),
                    () -> assertTrue(all.contains("u takes the last back"), all),
                    () -> assertTrue(all.contains("'what' is not a number"), all),
                    () -> assertTrue(all.contains("past it: back 0.6 steps"), all));
        }
    }

    private Process atTerminal(PseudoTerminal terminal, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(System.getProperty("slugpeak.launcher")));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectInput(Path.of(terminal.path()).toFile())
                .redirectOutput(Path.of(terminal.path()).toFile())
                .redirectErrorStream(true);
        builder.environment().put("XDG_STATE_HOME", folder.toString());
        return builder.start();
    }

    /** Reads on until the text comes; what was read before it is dropped from what is looked at next. */
    private static void readUntil(PseudoTerminal terminal, StringBuilder all, String text) {
        StringBuilder fresh = new StringBuilder();
        while (fresh.indexOf(text) < 0) {
            fresh.append(new String(terminal.read(WAIT_MILLIS), StandardCharsets.UTF_8));
        }
        all.append(fresh);
    }

    private static long count(Result result, String type) {
        return result.output().stream()
                .filter(line -> WatchIT.type(line).equals(type))
                .count();
    }
}
