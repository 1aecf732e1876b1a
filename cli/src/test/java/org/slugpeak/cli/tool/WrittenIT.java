package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** What somebody keeps: nothing of it is destroyed, and what could not be written is said. */
@EnabledOnOs(OS.LINUX)
final class WrittenIT {

    @TempDir
    private Path folder;

    private Path log;
    private String recorded;

    @BeforeEach
    void record() throws IOException, InterruptedException {
        log = folder.resolve("tuesday.jsonl");
        Path csv = Files.writeString(folder.resolve("slug.csv"), SlugTravel.thereAndBack());
        PackagedTool.run(folder, "watch", "--from", csv.toString(), "--view", "none", "--log", log.toString());
        recorded = Files.readString(log);
    }

    private Result shell(String line) throws IOException, InterruptedException {
        return PackagedTool.shell(folder, line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "$SLUGPEAK report tuesday.jsonl --out tuesday.jsonl",
                "ln -s tuesday.jsonl page.html; $SLUGPEAK report tuesday.jsonl --out page.html",
                "ln tuesday.jsonl page.html; $SLUGPEAK report tuesday.jsonl --out page.html",
                "ln -s tuesday.jsonl tuesday.html; $SLUGPEAK report tuesday.jsonl",
                "cp tuesday.jsonl wednesday.txt; $SLUGPEAK report tuesday.jsonl --csv --out wednesday.txt",
                "ln -s tuesday.jsonl t.md; $SLUGPEAK report tuesday.jsonl --markdown --out t.md",
                "$SLUGPEAK scale generator --point 400:397 --point 500:503 --save tuesday.jsonl",
                "$SLUGPEAK replay slug.csv --view none --cue-wav tuesday.jsonl",
                "$SLUGPEAK replay slug.csv --view none --log tuesday.jsonl",
            })
    void nothingThatIsNoReportOfOursIsEverReplaced(String line) throws IOException, InterruptedException {
        Result result = shell(line);
        assertAll(
                () -> assertEquals(1, result.exitCode(), result.errors()),
                () -> assertEquals(1, result.errors().lines().count(), result.errors()),
                () -> assertTrue(result.errors().contains("is there already"), result.errors()),
                () -> assertEquals(recorded, Files.readString(log), "the log was not touched"),
                () -> assertEquals(List.of(), drafts()));
    }

    @Test
    void aSessionThatWasRefusedLeavesNoEmptyLogInTheWayOfTheNextTry() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("cues.wav"), "precious");
        assertEquals(
                1,
                shell("$SLUGPEAK replay slug.csv --log new.jsonl --cue-wav cues.wav")
                        .exitCode());
        assertEquals(
                0,
                shell("$SLUGPEAK replay slug.csv --log new.jsonl --view none").exitCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--csv", "--markdown"})
    void anOlderReportIsReplacedWhole(String form) throws IOException, InterruptedException {
        String line = "$SLUGPEAK report tuesday.jsonl --out kept " + form;
        assertEquals(0, shell(line).exitCode());
        String first = Files.readString(folder.resolve("kept"));
        Result again = shell(line);
        assertEquals(0, again.exitCode(), again.errors());
        assertEquals(first, Files.readString(folder.resolve("kept")));
        assertEquals(List.of(), drafts());
    }

    @Test
    void aReportBehindALinkIsReplacedThereAndTheLinkStays() throws IOException, InterruptedException {
        Result result = shell("mkdir d; $SLUGPEAK report tuesday.jsonl --out d/r.html; ln -s d/r.html l.html;"
                + " $SLUGPEAK report tuesday.jsonl --out l.html");
        assertEquals(0, result.exitCode(), result.errors());
        assertTrue(Files.isSymbolicLink(folder.resolve("l.html")));
        assertTrue(Files.readString(folder.resolve("d/r.html")).contains("</html>"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "report tuesday.jsonl --csv",
                "report tuesday.jsonl --markdown",
                "superhet tune --if 455 --dial 600,1000,1400",
                "watch --from slug.csv",
                "watch --from slug.csv --plain",
                "watch --from slug.csv --json",
                "replay tuesday.jsonl",
                "curve --help",
                "--help",
                "--version",
            })
    void whatDoesNotGetToStandardOutputIsSaidOnceAndTheCodeIsOne(String command)
            throws IOException, InterruptedException {
        Result result = shell("$SLUGPEAK " + command + " >/dev/full");
        assertAll(
                () -> assertEquals(1, result.exitCode(), result.errors()),
                () -> assertEquals(1, result.errors().lines().count(), result.errors()),
                () -> assertTrue(result.errors().contains("standard output takes nothing any more"), result.errors()));
    }

    @Test
    void standardOutputThatTheParentClosedIsSaidLikeAFullOne() throws IOException, InterruptedException {
        Result result = shell("$SLUGPEAK watch --from slug.csv --log out.jsonl >&-");
        assertEquals(1, result.exitCode(), result.errors());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("standard output takes nothing any more"), result.errors());
        assertEquals(readings(recorded), readings(Files.readString(folder.resolve("out.jsonl"))), "the log has it all");
    }

    @Test
    void standardInputThatTheParentClosedIsAtItsEnd() throws IOException, InterruptedException {
        Result result = shell("$SLUGPEAK watch --from - <&-");
        assertEquals(1, result.exitCode(), result.errors());
        assertTrue(result.errors().contains("standard input holds no readings"), result.errors());
    }

    @Test
    void everythingClosedIsNoReasonToCrash() throws IOException, InterruptedException {
        Result result = shell("$SLUGPEAK watch --from slug.csv --view none --log all.jsonl <&- >&- 2>&-");
        assertEquals(0, result.exitCode(), "nothing was asked for but the log");
        assertEquals(readings(recorded), readings(Files.readString(folder.resolve("all.jsonl"))));
    }

    @Test
    void aMinusStandsBeforeNoZero() throws IOException, InterruptedException {
        Result result = shell("$SLUGPEAK replay tuesday.jsonl; $SLUGPEAK report tuesday.jsonl --markdown");
        String all = String.join("\n", result.output());
        assertFalse(all.matches("(?s).*-0(\\.0+)? (dB|kHz|%).*"), all);
    }

    private List<String> drafts() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString())
                    .filter(name -> name.endsWith(".draft"))
                    .toList();
        }
    }

    private static List<String> readings(String text) {
        return text.lines()
                .filter(line -> line.contains("\"type\":\"reading\""))
                .toList();
    }
}
