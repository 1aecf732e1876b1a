package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Files that somebody made in order to do harm, and folders that others can write. */
@EnabledOnOs(OS.LINUX)
final class HostileIT {

    /** Escape, bell, nothing, a C1 function, a mark that turns the order of letters, the end of a line. */
    private static final String EVIL = "A\u001b[2J\u0007\u0000\u009b31m\u202eB\u2028C";

    private static final String START = "{\"type\":\"session\",\"version\":1,\"startedAt\":\"2026-01-05T10:00:00Z\","
            + "\"source\":\"%s\",\"quantity\":\"%s\",\"unit\":\"V\",\"seek\":\"peak\",\"tool\":\"%s\"}\n";

    private static final String READING = "{\"type\":\"reading\",\"t\":%d,\"value\":1,\"smoothed\":1,\"best\":1,"
            + "\"bestSigma\":0.1,\"ofBest\":1,\"trend\":\"steady\",\"condition\":\"ok\"}\n";

    /** Ways to have a log shown. */
    static final List<String> SHOWN = List.of(
            "replay evil.jsonl --view lines",
            "replay evil.jsonl --plain",
            "replay evil.jsonl --json",
            "report evil.jsonl --markdown",
            "report evil.jsonl --csv",
            "report evil.jsonl --out page; cat page");

    @TempDir
    private Path folder;

    private static String json(String text) {
        StringBuilder escaped = new StringBuilder();
        text.chars().forEach(each -> escaped.append(String.format("\\u%04x", each)));
        return escaped.toString();
    }

    private static void assertHarmless(Result result) {
        String all = String.join("\n", result.output()) + result.errors();
        boolean harmless = all.codePoints()
                .allMatch(each -> each == '\n'
                        || each == '\t'
                        || !(Character.isISOControl(each)
                                || each == 0x202E
                                || each == 0x2028
                                || Character.getType(each) == Character.FORMAT));
        assertTrue(harmless, all);
    }

    private static void assertNoTrace(Result result) {
        String all = result.errors() + String.join("\n", result.output());
        assertFalse(
                all.contains("\tat ") || all.contains("Exception in"), all.substring(0, Math.min(2000, all.length())));
    }

    private Result shell(String line) throws IOException, InterruptedException {
        return PackagedTool.shell(folder, line);
    }

    @ParameterizedTest
    @FieldSource("SHOWN")
    void nothingInALogIsObeyedByATerminalOrAPage(String shown) throws IOException, InterruptedException {
        String evil = json(EVIL);
        Files.writeString(
                folder.resolve("evil.jsonl"),
                String.format(START, evil, evil, evil)
                        + "{\"type\":\"adjuster\",\"t\":0,\"name\":\"" + evil
                        + "\",\"action\":\"begin\",\"before\":1}\n"
                        + String.format(READING, 0)
                        + "{\"type\":\"link\",\"t\":1,\"state\":\"lost\",\"detail\":\"" + evil + "\"}\n"
                        + "{\"type\":\"mark\",\"t\":1,\"text\":\"" + evil + "\"}\n"
                        + "{\"type\":\"advice\",\"t\":1,\"topic\":\"range-changed\",\"text\":\"" + evil + "\"}\n"
                        + "{\"type\":\"overload\",\"t\":1,\"cause\":\"over-range\",\"advice\":\"" + evil + "\"}\n"
                        + String.format(READING, 2)
                        + "{\"type\":\"end\",\"t\":2,\"readings\":2,\"reason\":\"" + evil + "\"}\n");
        Result result = shell("$SLUGPEAK " + shown);
        assertEquals(0, result.exitCode(), result.errors());
        assertHarmless(result);
        assertTrue(String.join("", result.output()).contains("A"), "it is shown all the same");
    }

    @Test
    void aMistakeInAPlanIsSaidWithoutWhatATerminalWouldObey() throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("plan.toml"), "name = \"x\"\nchassis = \"" + EVIL.replace("\u0000", "") + "\"\n");
        Files.writeString(folder.resolve("other.toml"), "name = \"x\"\n\"\\u001b[2J\" = 1\n");
        for (String plan : List.of("plan.toml", "other.toml")) {
            Result result = shell("$SLUGPEAK align " + plan + " --from sim:plan");
            assertEquals(1, result.exitCode(), result.errors());
            assertEquals(1, result.errors().lines().count(), result.errors());
            assertHarmless(result);
        }
    }

    @Test
    void aPlanNameInALogIsSaidWithoutWhatATerminalWouldObey() throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("evil.jsonl"),
                String.format(START, "sim", "voltage", "slugpeak") + "{\"type\":\"advice\",\"t\":0,\"topic\":\"plan\","
                        + "\"text\":\"" + json(EVIL) + "\"}\n");
        Result result = shell("$SLUGPEAK align tarnfield-54a --from sim:plan --resume evil.jsonl");
        assertEquals(1, result.exitCode());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertHarmless(result);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{ printf 'a = '; head -c 1000 /dev/zero | tr '\\0' '['; } >bad.toml",
                "{ printf 'a = '; yes '{a=' | head -1000 | tr -d '\\n'; } >bad.toml",
                "yes a. | head -300000 | tr -d '\\n' >bad.toml",
                "{ echo 'name = \"n\"'; yes '[[stage]]' | head -90000; } >bad.toml",
                "{ echo 'name = \"n\"'; yes '[[stage]]' | head -200000; } >bad.toml",
                "{ printf 'name = \"'; head -c 50000000 /dev/zero | tr '\\0' a; } >bad.toml",
                "{ yes 'a = [' | head -100000; } >bad.toml",
                "head -c 900000 /dev/urandom >bad.toml",
                "ln -s /dev/zero bad.toml",
            })
    void aPlanOrDescriptionOfAnySizeAndDepthIsRefusedInOneLine(String making) throws IOException, InterruptedException {
        Result plan = shell(making + "; $SLUGPEAK align bad.toml --from sim:plan");
        Result meter = shell("$SLUGPEAK watch --from /dev/ttyNONE --meter bad.toml");
        for (Result result : List.of(plan, meter)) {
            assertAll(
                    () -> assertEquals(1, result.exitCode()),
                    () -> assertEquals(
                            1,
                            result.errors().lines().count(),
                            result.errors().lines().findFirst().orElse("")),
                    () -> assertTrue(result.errors().length() < 10_000, "too long to be read"),
                    () -> assertNoTrace(result));
        }
    }

    @Test
    void oneLineWithoutEndCostsThatLineOnly() throws IOException, InterruptedException {
        try (BufferedWriter log = Files.newBufferedWriter(folder.resolve("long.jsonl"))) {
            log.write(String.format(START, "sim", "voltage", "slugpeak") + String.format(READING, 0));
            for (int i = 0; i < 20_000; i++) {
                log.write("x".repeat(1000));
            }
            log.write("\n" + String.format(READING, 1));
        }
        Result replayed = shell("$SLUGPEAK replay long.jsonl --json");
        assertEquals(0, replayed.exitCode(), replayed.errors());
        assertEquals(
                2,
                replayed.output().stream()
                        .filter(line -> line.contains("\"type\":\"reading\""))
                        .count());
        assertTrue(replayed.errors().contains("line 3: is longer than 1048576 bytes"), replayed.errors());
        Result report = shell("$SLUGPEAK report long.jsonl --csv");
        assertEquals(3, report.output().size(), "a heading and two readings");
    }

    @Test
    void halfAMillionBadLinesAreToldInAFew() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("head"), String.format(START, "sim", "voltage", "slugpeak"));
        Result result = shell("{ cat head; yes nonsense | head -500000; } >bad.jsonl; $SLUGPEAK report bad.jsonl");
        assertEquals(0, result.exitCode(), result.errors());
        assertEquals(7, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("500000 lines in all were passed over"), result.errors());
    }

    /** With fewer than twenty the virtual machine itself does not start. */
    @ParameterizedTest
    @ValueSource(ints = {20, 24, 28})
    void tooFewFileDescriptorsAreSaidInFewLines(int limit) throws IOException, InterruptedException {
        Result result = shell("ulimit -n " + limit + "; $SLUGPEAK ports; $SLUGPEAK watch --from /dev/ttyNONE");
        assertTrue(result.errors().lines().count() <= 4, result.errors());
        assertNoTrace(result);
    }

    /** Between no start at all and a start that goes well lies a limit at which the log file's clock cannot read the time zones. */
    @ParameterizedTest
    @ValueSource(ints = {26, 27, 28, 29, 30})
    void aLogThatCannotBeOpenedForWantOfDescriptorsEndsAtOnce(int limit) throws IOException, InterruptedException {
        Result result = shell("ulimit -n " + limit + "; $SLUGPEAK watch --from - --log log.jsonl </dev/null");
        assertTrue(result.errors().lines().count() <= 3, result.errors());
        assertFalse(result.errors().contains("did not let go in time"), result.errors());
        assertNoTrace(result);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rwxrwxrwx", "rwxrwxr-x"})
    void nothingIsLoadedFromAFolderThatOthersCanWrite(String mode) throws IOException, InterruptedException {
        Path cache = Files.createDirectory(folder.resolve("cache"));
        Path open = Files.createDirectories(cache.resolve("slugpeak/native"));
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString(mode));
        Result result = PackagedTool.shell(
                folder, Map.of("XDG_CACHE_HOME", cache.toString(), "TMPDIR", folder.toString()), "$SLUGPEAK ports");
        assertEquals(1, result.exitCode(), result.errors());
        assertEquals(1, result.errors().lines().count(), result.errors());
        assertTrue(result.errors().contains("others may write " + open), result.errors());
        try (Stream<Path> unpacked = Files.list(open)) {
            assertEquals(0, unpacked.count(), "nothing was unpacked there");
        }
    }

    @Test
    void whereNoFolderOfOnesOwnCanBeMadeNothingIsLoaded() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("file"), "");
        Result result = PackagedTool.shell(folder, Map.of("XDG_CACHE_HOME", folder + "/file"), "$SLUGPEAK ports");
        assertEquals(1, result.exitCode(), result.errors());
        assertTrue(result.errors().contains("set XDG_CACHE_HOME"), result.errors());
        assertFalse(
                Files.exists(Path.of(System.getProperty("java.io.tmpdir"), "jSerialComm")), "none is made elsewhere");
    }

    @Test
    void aNameThatIsAFormulaStaysText() throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("evil.jsonl"),
                String.format(START, "sim", "voltage", "slugpeak")
                        + "{\"type\":\"adjuster\",\"t\":0,\"name\":\"=HYPERLINK(1)\",\"action\":\"begin\",\"before\":1}\n"
                        + String.format(READING, 0));
        Result result = shell("$SLUGPEAK report evil.jsonl --csv");
        assertTrue(
                result.output().get(1).contains(",'=HYPERLINK(1),"),
                result.output().toString());
    }
}
