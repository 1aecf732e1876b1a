package org.slugpeak.cli.tool;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.testkit.PseudoTerminal;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** What somebody gets who pipes readings into the tool. */
final class WatchIT {

    @TempDir
    private Path folder;

    @Test
    void aProgramDrivesItStepByStepThroughPipes() throws IOException, InterruptedException {
        try (PackagedTool tool = PackagedTool.start(folder, "watch", "--from", "-", "--json")) {
            for (int step = 0; step < 20; step++) {
                double seconds = step / 10.0;
                tool.send(String.format(Locale.ROOT, "%.1f,0.5%n", seconds));
                String record = tool.lineWith("\"type\":\"reading\"");
                assertTrue(record.contains("\"value\":0.5"), record);
                assertTrue(record.contains("\"condition\":\"ok\""), record);
            }
            tool.endInput();
            Result result = tool.finish();
            assertEquals(0, result.exitCode(), result.errors());
            assertTrue(result.output().get(result.output().size() - 1).contains("\"readings\":20"));
        }
    }

    @Test
    void aSlugTurnedPastItsPeakAndBackIsPassedReturnedAndHeld() throws IOException, InterruptedException {
        Path csv = Files.writeString(folder.resolve("slug.csv"), SlugTravel.thereAndBack());
        Result result = PackagedTool.run(folder, "watch", "--from", csv.toString(), "--json");
        assertEquals(0, result.exitCode(), result.errors());
        List<String> events = result.output().stream()
                .map(WatchIT::type)
                .filter(Predicate.not(Set.of("reading", "advice")::contains))
                .toList();
        assertEquals(List.of("session", "adjuster", "passed", "returned", "held", "adjuster", "end"), events);
    }

    @Test
    void everyReadingGivesExactlyOneReadingRecord() throws IOException, InterruptedException {
        Result result = PackagedTool.runWithInput(
                folder, "1\n2\n\n# a remark\nOL\n3\n", "watch", "--from", "-", "--json", "--rate", "10");
        long readings = result.output().stream()
                .filter(line -> type(line).equals("reading"))
                .count();
        assertEquals(4, readings, result.output().toString());
        assertTrue(result.output().stream().anyMatch(line -> line.contains("\"condition\":\"over-range\"")));
    }

    @Test
    void aLogThatIsThereIsNeverOverwritten() throws IOException, InterruptedException {
        Path log = Files.writeString(folder.resolve("old.jsonl"), "precious");
        Result result = PackagedTool.runWithInput(folder, "1\n", "watch", "--from", "-", "--log", log.toString());
        assertAll(
                () -> assertEquals(1, result.exitCode()),
                () -> assertEquals("precious", Files.readString(log)),
                () -> assertEquals(1, result.errors().lines().count(), result.errors()),
                () -> assertTrue(result.errors().contains("old.jsonl"), result.errors()));
    }

    @Test
    void replayOfALogGivesTheSameRecordsAsLive() throws IOException, InterruptedException {
        Path csv = Files.writeString(folder.resolve("slug.csv"), SlugTravel.thereAndBack());
        Path log = folder.resolve("session.jsonl");
        Result live = PackagedTool.run(folder, "watch", "--from", csv.toString(), "--json", "--log", log.toString());
        Result replayed = PackagedTool.run(folder, "replay", log.toString(), "--json");
        assertAll(
                () -> assertEquals(0, replayed.exitCode(), replayed.errors()),
                () -> assertEquals(live.output(), replayed.output()),
                () -> assertEquals(live.output(), Files.readAllLines(log)));
    }

    @Test
    void interruptedItClosesTheLogAndLeavesWith130() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", "-", "--json", "--log", log.toString())) {
            tool.send("0.5\n");
            tool.lineWith("\"type\":\"reading\"");
            tool.signal("INT");
            Result result = tool.finish();
            assertEquals(130, result.exitCode(), result.errors());
        }
        List<String> lines = Files.readAllLines(log);
        assertTrue(lines.get(lines.size() - 1).contains("\"type\":\"end\""), lines.toString());
        assertTrue(lines.get(lines.size() - 1).contains("interrupted"), lines.toString());
        Result replayed = PackagedTool.run(folder, "replay", log.toString(), "--json");
        assertEquals(0, replayed.exitCode(), replayed.errors());
        assertEquals(lines, replayed.output(), "the replay ends as the session did");
    }

    @Test
    void linesThatCeaseToComeAreSaidInRecordLogAndNotice() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", "-", "--json", "--log", log.toString())) {
            for (int i = 0; i < 10; i++) {
                tool.send("0.5\n");
                tool.lineWith("\"type\":\"reading\"");
            }
            String stale = tool.lineWith("\"type\":\"link\"");
            assertTrue(stale.contains("\"state\":\"stale\"") && stale.contains("no reading for "), stale);
            tool.send("0.5\n");
            assertTrue(tool.lineWith("\"type\":\"link\"").contains("\"state\":\"resumed\""));
            tool.endInput();
            Result result = tool.finish();
            assertEquals(0, result.exitCode(), result.errors());
            assertTrue(result.errors().contains("link stale: no reading for "), result.errors());
        }
        assertTrue(Files.readString(log).contains("\"state\":\"stale\""));
    }

    @Test
    void aFirstReadingThatDoesNotComeIsSaidInRecordLogAndNotice() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", "-", "--json", "--log", log.toString())) {
            String stale = tool.lineWith("\"type\":\"link\"");
            assertTrue(stale.contains("\"state\":\"stale\""), stale);
            assertTrue(stale.contains("no reading yet, after 10 s: see that"), stale);
            tool.send("seconds,volts\n0,0.5\n0.1,0.5\n");
            assertTrue(tool.lineWith("\"type\":\"link\"").contains("\"state\":\"resumed\""));
            tool.lineWith("the readings are in V");
            tool.endInput();
            Result result = tool.finish();
            assertEquals(0, result.exitCode(), result.errors());
            assertTrue(result.errors().contains("link stale: no reading yet"), result.errors());
        }
        assertTrue(Files.readString(log).contains("no reading yet"));
    }

    @Test
    void aFirstReadingThatDoesNotComeIsSaidInPlainLines() throws IOException, InterruptedException {
        try (PackagedTool tool = PackagedTool.start(folder, "watch", "--from", "-", "--view", "lines")) {
            tool.lineWith("NO NEW READINGS: no reading yet, after 10 s: see that");
            tool.send("0.5\n");
            tool.lineWith("readings again");
            tool.lineWith("0.500");
        }
    }

    @Test
    void aNamedPipeThatFallsSilentIsSaidInPlainLinesAndItEndsWhenToldTo() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe.csv");
        new ProcessBuilder("mkfifo", pipe.toString()).inheritIO().start().waitFor();
        // Opened for both, or a tool that does not start would keep the test waiting for a reader.
        try (PackagedTool tool = PackagedTool.start(folder, "watch", "--from", pipe.toString(), "--view", "lines");
                RandomAccessFile writer = new RandomAccessFile(pipe.toFile(), "rw")) {
            for (int i = 0; i < 10; i++) {
                writer.write("0.5\n".getBytes(UTF_8));
            }
            tool.lineWith("NO NEW READINGS: no reading for ");
            tool.signal("TERM");
            assertEquals(130, tool.finish().exitCode());
        }
    }

    @Test
    void aPipeThatNobodyOpensDoesNotKeepItFromEnding() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe.csv");
        new ProcessBuilder("mkfifo", pipe.toString()).inheritIO().start().waitFor();
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", pipe.toString(), "--json", "--log", log.toString())) {
            while (!Files.exists(log)) {
                Thread.onSpinWait();
            }
            tool.signal("HUP");
            assertEquals(130, tool.finish().exitCode());
        }
        assertTrue(Files.readString(log).contains("terminal closed"));
    }

    /** Its output is a pipe that nobody empties, so that it cannot end by itself. */
    @Test
    void whoeverAsksAgainDoesNotWait() throws IOException, InterruptedException {
        try (PackagedTool tool = PackagedTool.start(folder, "watch", "--from", "-", "--json")) {
            tool.send("1.25\n".repeat(10_000));
            while (tool.process().getInputStream().available() == 0) {
                Thread.onSpinWait();
            }
            while (!tool.process().waitFor(1500, TimeUnit.MILLISECONDS)) {
                tool.signal("INT");
            }
            assertEquals(130, tool.process().exitValue());
            assertEquals("", new String(tool.process().getErrorStream().readAllBytes(), UTF_8));
        }
    }

    @Test
    void aTerminalThatGoesWithoutASignalEndsTheLinesToo() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool = shownInAWindowThatClosesWithoutASignal()) {
            assertEquals(130, tool.finish().exitCode());
        }
        assertTrue(Files.readString(log).contains("\"reason\":\"terminal closed\""));
    }

    private PackagedTool shownInAWindowThatClosesWithoutASignal() throws IOException {
        try (PseudoTerminal window = PseudoTerminal.open()) {
            PackagedTool tool = PackagedTool.startLine(
                    folder,
                    Map.of("W", window.path()),
                    "exec setsid \"$SLUGPEAK\" watch --from sim --view lines --log session.jsonl >\"$W\" 2>&1");
            while (!new String(window.read(20), UTF_8).contains("no best yet")) {
                assertTrue(tool.process().isAlive());
            }
            return tool;
        }
    }

    @Test
    void killedItLosesNothingThatItHadShownInLinesEither() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool = PackagedTool.start(
                folder, "watch", "--from", "-", "--rate", "50", "--view", "lines", "--log", log.toString())) {
            tool.send("1\n".repeat(300));
            tool.lineWith("5.98 s");
            tool.signal("KILL");
            tool.process().waitFor();
        }
        assertEquals(
                300,
                Files.readAllLines(log).stream()
                        .filter(line -> type(line).equals("reading"))
                        .count());
    }

    @Test
    void aValueOutOfRangeIsWrongUsage() throws IOException, InterruptedException {
        Result result = PackagedTool.runWithInput(folder, "1\n", "watch", "--from", "-", "--dwell", "0");
        assertEquals(2, result.exitCode());
        assertEquals(
                List.of("slugpeak watch: --dwell takes 0.1 to 60 seconds, not 0.0; see slugpeak watch --help"),
                result.errors().lines().toList());
    }

    @Test
    void killedItLosesNothingThatItHadShown() throws IOException, InterruptedException {
        Path log = folder.resolve("session.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", "-", "--json", "--log", log.toString())) {
            for (int step = 0; step < 50; step++) {
                tool.send(step + "\n");
                tool.lineWith("\"type\":\"reading\"");
            }
            tool.signal("KILL");
            tool.process().waitFor();
        }
        Result replayed = PackagedTool.run(folder, "replay", log.toString(), "--json");
        assertEquals(0, replayed.exitCode(), replayed.errors());
        assertEquals(
                50,
                replayed.output().stream()
                        .filter(line -> type(line).equals("reading"))
                        .count());
    }

    static String type(String line) {
        int start = line.indexOf("\"type\":\"") + 8;
        return line.substring(start, line.indexOf('"', start));
    }
}
