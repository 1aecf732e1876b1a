package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** What somebody gets who has a plan carried out. */
final class AlignIT {

    @TempDir
    private Path folder;

    private Result align(String... more) throws IOException, InterruptedException {
        List<String> args = new java.util.ArrayList<>(
                List.of("align", "tarnfield-54a", "--from", "sim:plan", "--speed", "100", "--view", "none"));
        args.addAll(List.of(more));
        return PackagedTool.run(folder, args.toArray(String[]::new));
    }

    @Test
    void theWholeIfJobIsDoneWithoutAKey() throws IOException, InterruptedException {
        Path log = folder.resolve("if.jsonl");
        Result result = align("--only", "AM IF", "--log", log.toString());
        assertEquals(0, result.exitCode(), result.errors());
        List<String> records = Files.readAllLines(log);
        assertTrue(records.stream().anyMatch(line -> line.contains("\"topic\":\"rest\"")), "no resting reading");
        assertTrue(
                records.stream().anyMatch(line -> line.contains("insulated tool, one hand")),
                "nobody was told how to turn");
        assertTrue(done(records) >= 8, done(records) + " adjusters were recorded");
        assertTrue(
                records.stream().anyMatch(line -> line.contains("\"topic\":\"round\"") && line.contains(": done")),
                "no round was the last");
        assertTrue(records.stream().anyMatch(line -> line.contains("\"topic\":\"plan-over\"")), "never through");
        assertTrue(records.get(records.size() - 1).contains("\"reason\":\"plan through\""));
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("the plan is through: "), result.errors());
        assertTrue(result.errors().contains(log.toString()), result.errors());
        Result again = align("--only", "AM IF", "--resume", log.toString());
        assertEquals(0, again.exitCode(), again.errors());
        assertTrue(again.errors().contains("through already"), again.errors());
    }

    private static long done(List<String> records) {
        return records.stream()
                .filter(line -> line.contains("\"type\":\"adjuster\"") && line.contains("\"action\":\"done\""))
                .count();
    }

    @Test
    void theLogOfAnotherSetIsRefusedInOneLine() throws IOException, InterruptedException {
        Path log = Files.writeString(folder.resolve("other.jsonl"), """
                {"type":"session","version":1,"startedAt":"2026-01-05T10:00:00Z","source":"sim","quantity":"voltage",\
                "unit":"V","seek":"peak","tool":"slugpeak 0.1.0"}
                {"type":"advice","t":0.0,"topic":"plan","text":"Quillmere FM-8","amount":null}
                """);
        Result result = align("--resume", log.toString());
        assertEquals(1, result.exitCode());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("is a log of Quillmere FM-8, not of Tarnfield 54A"), result.errors());
    }

    @Test
    void aDangerousBenchIsRefusedInOneLine() throws IOException, InterruptedException {
        Result result = PackagedTool.run(
                folder,
                "align",
                "tarnfield-54a",
                "--from",
                "/dev/ttyNONE",
                "--chassis",
                "live",
                "--isolated",
                "no",
                "--earthed",
                "yes",
                "--blocking",
                "yes");
        assertEquals(1, result.exitCode());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("DANGER"), result.errors());
    }

    @Test
    void aPlanIsShownWithoutAnySourceAndABadOneIsRefusedInItsLine() throws IOException, InterruptedException {
        Result shown = PackagedTool.run(folder, "align", "larkmoor-6c", "--show");
        assertEquals(0, shown.exitCode(), shown.errors());
        assertEquals("", shown.errors());
        assertEquals(
                "In all 8 adjusters, 8 to 48 settings.",
                shown.output().get(shown.output().size() - 1));
        Path bad = Files.writeString(folder.resolve("bad.toml"), "name = \"x\"\n[[stage]]\nname = \"s\"\n");
        Result refused = PackagedTool.run(folder, "align", bad.toString(), "--show");
        assertEquals(1, refused.exitCode());
        assertEquals(1, refused.errors().lines().count(), refused.errors());
        assertTrue(refused.errors().contains("bad.toml:2: a stage needs adjusters"), refused.errors());
    }

    @Test
    void aPlanThatIsNotOnlyShownNeedsASource() throws IOException, InterruptedException {
        Result result = PackagedTool.run(folder, "align", "larkmoor-6c");
        assertEquals(2, result.exitCode());
        assertTrue(result.errors().contains("--from SOURCE is missing"), result.errors());
    }

    @Test
    void theResponseCurveComesWithoutAKey() throws IOException, InterruptedException {
        Result result = PackagedTool.run(
                folder, "curve", "--from", "sim:aligned", "--speed", "100", "--span", "440..470", "--step", "2");
        assertEquals(0, result.exitCode(), result.errors());
        assertTrue(result.errors().contains("generator to 440.00 kHz (1 of 16)"), result.errors());
        assertTrue(
                String.join("\n", result.output()).contains("one hump"),
                result.output().toString());
    }
}
