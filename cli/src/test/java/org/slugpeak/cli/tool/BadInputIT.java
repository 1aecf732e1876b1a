package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** What somebody gets who gives the tool something that it cannot use: one line that says so, and nothing is lost. */
final class BadInputIT {

    /**
     * One file of readings.
     *
     * @param text what is in it
     * @param readings how many of its lines are good and must be recorded
     * @param exitCode how the tool ends
     * @param said a part of each line on standard error, in order; no more lines may come
     */
    record Bad(String name, String text, int readings, int exitCode, List<String> said) {

        Bad(String name, String text, int readings, int exitCode, String... said) {
            this(name, text, readings, exitCode, List.of(said));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static final List<Bad> FILES = List.of(
            new Bad("a word among numbers", "1\nabc\n2\n", 2, 0, "line 2: 'abc' is not a number"),
            new Bad(
                    "no finite numbers",
                    "0,1\n1,NaN\n2,Infinity\n3,-inf\n4,1e999\n5,2\n",
                    2,
                    0,
                    "line 2: 'NaN' is not a finite number",
                    "line 3: 'Infinity' is not a finite number",
                    "line 4: '-inf' is not a finite number",
                    "line 5: '1e999' is beyond the range"),
            new Bad("time that runs back", "0,1\n1,1\n0.5,1\n2,1\n", 3, 0, "line 3: the time runs back"),
            new Bad("the largest and the smallest doubles", "1.7e308\n-1.7e308\n4.9e-324\n1\n", 4, 0),
            new Bad("subnormal numbers", "1e-310\n2e-310\n1e-310\n", 3, 0),
            new Bad("too many columns", "0,1\n1,2,3\n2,4\n", 2, 0, "line 2: 3 columns where 2 are expected"),
            new Bad("a line that never ends", "1\n" + "2".repeat(5000) + "\n3\n", 2, 0, "line 2: longer than 4096"),
            new Bad("a last line without an end", "1\n2", 2, 0),
            new Bad(
                    "many bad lines are told at first and then counted",
                    "1\n" + "?\n".repeat(9) + "2\n",
                    2,
                    0,
                    "line 2:",
                    "line 3:",
                    "line 4:",
                    "line 5:",
                    "line 6:",
                    "9 lines in all were not readings"),
            new Bad("an empty file", "", 0, 1, "holds no readings"),
            new Bad("a header line alone", "seconds,volts\n", 0, 1, "holds no readings"),
            new Bad("decimal commas that look like columns", "0,5\n1,5\n2,5\n1,5\n", 3, 1, "use --decimal-comma"));

    /**
     * A command line that cannot be obeyed; {@code FOLDER} stands for the folder of the test.
     *
     * @param exitCode how the tool ends
     * @param said a part of the one line on standard error
     */
    record Refused(String args, int exitCode, String said) {}

    static final List<Refused> COMMANDS = List.of(
            new Refused("watch --from FOLDER/none.csv", 1, "there is no file FOLDER/none.csv"),
            new Refused("replay FOLDER/none.jsonl", 1, "none.jsonl"),
            new Refused("watch --from FOLDER/good.csv --log FOLDER/no/such.jsonl", 1, "its folder is not there"),
            new Refused("watch --from FOLDER/good.csv --log FOLDER", 1, "is there already"),
            new Refused("watch --from FOLDER/good.csv --wibble", 2, "'--wibble'"),
            new Refused("watch --from FOLDER/good.csv --seek hill", 2, "'hill' is none of peak, dip, zero"),
            new Refused("watch --from FOLDER/good.csv --seek", 2, "--seek"),
            new Refused("watch --from FOLDER/good.csv --meter generic-scpi", 2, "--meter is for an instrument"),
            new Refused("watch --from - --speed 2", 2, "--speed is for a simulated set"),
            new Refused("watch --from sim --ohms 3.2", 2, "--ohms is for audio"),
            new Refused("watch --from FOLDER/port --rate 3", 2, "--rate is for readings as text"),
            new Refused("watch --from FOLDER", 1, "is a folder: name a port or a file"),
            new Refused("watch --from FOLDER/broken.toml", 1, "holds no readings"),
            new Refused("watch", 2, "--from"),
            new Refused("wach", 2, "did you mean watch"),
            new Refused("", 2, "no command given"),
            new Refused("watch --from FOLDER/port --meter FOLDER/broken.toml", 1, "broken.toml:2: 'speaks' must be"),
            new Refused("watch --from FOLDER/port --meter generic-scip", 1, "did you mean 'generic-scpi'"),
            new Refused("replay FOLDER/newer.jsonl", 1, "record version 99"),
            new Refused("report FOLDER/newer.jsonl", 1, "record version 99"),
            new Refused("replay FOLDER/empty.jsonl", 1, "empty.jsonl is empty"),
            new Refused("watch --from FOLDER/two.csv", 1, "more than one column may be the reading"),
            new Refused("watch --from FOLDER/thousands.csv", 1, "'1,234' may be 1.234 or 1234"),
            new Refused("curve --points FOLDER/four.csv", 1, "may be four numbers, or 440.5 and 1.9"),
            new Refused("watch --from tcp:localhost:0", 1, "is no address on the network"),
            new Refused("watch --from tcp:localhost --baud 9600", 1, "--baud is for serial ports"),
            new Refused("watch --from FOLDER/good.csv --unit furlongs", 2, "--unit"));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @FieldSource("FILES")
    void whatIsBadIsSaidAndWhatIsGoodIsKept(Bad bad) throws IOException, InterruptedException {
        Path csv = Files.writeString(folder.resolve("bad.csv"), bad.text());
        Path log = folder.resolve("log.jsonl");
        Result result = PackagedTool.run(folder, "watch", "--from", csv.toString(), "--json", "--log", log.toString());
        assertAll(
                () -> assertEquals(bad.exitCode(), result.exitCode(), result.errors()),
                () -> assertSaid(bad.said(), result),
                () -> assertEquals(
                        bad.readings(),
                        readings(result.output()),
                        result.output().toString()),
                () -> assertEquals(result.output(), Files.readAllLines(log)),
                () -> assertEquals(
                        "end", WatchIT.type(result.output().get(result.output().size() - 1))));
    }

    @ParameterizedTest
    @FieldSource("COMMANDS")
    void whatCannotBeDoneIsSaidInOneLine(Refused refused) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("good.csv"), "1\n2\n");
        Files.writeString(folder.resolve("two.csv"), "s,a,b\n0,1,1\n1,2,1\n");
        Files.writeString(folder.resolve("thousands.csv"), "s;v\n0;1,234\n1;1,240\n");
        Files.writeString(folder.resolve("four.csv"), "440,5,1,9\n441,5,1,8\n");
        Files.writeString(folder.resolve("broken.toml"), "name = \"broken\"\nspeaks = 3\n");
        Files.writeString(folder.resolve("newer.jsonl"), "{\"type\":\"session\",\"version\":99}\n");
        Files.writeString(folder.resolve("empty.jsonl"), "");
        String[] args = Arrays.stream(refused.args().split(" "))
                .filter(arg -> !arg.isEmpty())
                .map(this::inFolder)
                .toArray(String[]::new);
        Result result = PackagedTool.run(folder, args);
        assertEquals(refused.exitCode(), result.exitCode(), result.errors());
        assertSaid(List.of(inFolder(refused.said())), result);
    }

    @Test
    void aFileThatIsNoTextIsRefused() throws IOException, InterruptedException {
        byte[] noise = new byte[3000];
        new SplittableRandom(7).nextBytes(noise);
        Path file = Files.write(folder.resolve("noise.csv"), noise);
        Result result = PackagedTool.run(folder, "watch", "--from", file.toString(), "--json");
        List<String> said = result.errors().lines().toList();
        assertAll(
                () -> assertEquals(1, result.exitCode(), result.errors()),
                () -> assertTrue(said.get(said.size() - 1).contains("noise.csv is not text"), result.errors()),
                () -> assertEquals(0, readings(result.output())),
                () -> assertNoTrace(result));
    }

    @Test
    void aLogThatWasCutIsReadUpToTheCut() throws IOException, InterruptedException {
        Path csv = Files.writeString(folder.resolve("good.csv"), "1\n2\n3\n");
        Path log = folder.resolve("log.jsonl");
        PackagedTool.run(folder, "watch", "--from", csv.toString(), "--view", "none", "--log", log.toString());
        String whole = Files.readString(log);
        int third = whole.lastIndexOf("{\"type\":\"reading\"");
        Path cut = Files.write(
                folder.resolve("cut.jsonl"), whole.substring(0, third + 30).getBytes(StandardCharsets.UTF_8));
        Result result = PackagedTool.run(folder, "replay", cut.toString(), "--json");
        assertAll(
                () -> assertEquals(0, result.exitCode(), result.errors()),
                () -> assertSaid(List.of("is cut off; everything before it was read"), result),
                () -> assertEquals(2, readings(result.output()), result.output().toString()));
    }

    private String inFolder(String text) {
        return text.replace("FOLDER", folder.toString());
    }

    private static long readings(List<String> lines) {
        return lines.stream()
                .filter(line -> WatchIT.type(line).equals("reading"))
                .count();
    }

    private static void assertSaid(List<String> parts, Result result) {
        List<String> lines = result.errors().lines().toList();
        assertEquals(parts.size(), lines.size(), result.errors());
        for (int i = 0; i < parts.size(); i++) {
            assertTrue(lines.get(i).startsWith("slugpeak"), lines.get(i));
            assertTrue(lines.get(i).contains(parts.get(i)), "'" + parts.get(i) + "' in: " + lines.get(i));
        }
        assertNoTrace(result);
    }

    private static void assertNoTrace(Result result) {
        String all = result.errors() + String.join("\n", result.output());
        assertFalse(all.contains("\tat ") || all.toLowerCase(Locale.ROOT).contains("exception"), all);
    }
}
