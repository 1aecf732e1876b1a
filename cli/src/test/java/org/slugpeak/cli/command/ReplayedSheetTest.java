package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In a sheet nobody turns to a peak, and the generator is turned all the time: a replay hears no more in it than was heard live. */
class ReplayedSheetTest {

    /** What a person was asked to do stands in the log in words only, and a replay asks nobody. */
    private static final List<String> ASKED = List.of("set-input", "set-up", "plan", "safety");

    @TempDir
    private Path folder;

    private Path sheet(String point) {
        Path log = folder.resolve("live.jsonl");
        String[] options = "tarnfield-54a --from sim:plan --speed 1000 --view none".split(" ", -1);
        CommandRun run = CommandRun.of(new SheetCommand(), with(options, "--point", point, "--log", log.toString()));
        assertEquals(0, run.exitCode(), run.err());
        return log;
    }

    private static String[] with(String[] some, String... more) {
        return Stream.of(some, more).flatMap(Arrays::stream).toArray(String[]::new);
    }

    private List<String> again(Object command, String... options) throws IOException {
        Path copy = folder.resolve("again.jsonl");
        CommandRun run = CommandRun.of(command, with(options, "--view", "none", "--log", copy.toString()));
        assertEquals(0, run.exitCode(), run.err());
        return Files.readAllLines(copy);
    }

    private static List<String> unasked(Path log) throws IOException {
        return Files.readAllLines(log).stream()
                .filter(line -> ASKED.stream().noneMatch(topic -> line.contains("\"topic\":\"" + topic + '"')))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"voice-coil", "detector"})
    void givesLineForLineWhatWasRecordedLive(String point) throws IOException {
        Path log = sheet(point);
        assertEquals(unasked(log), again(new ReplayCommand(), log.toString()));
    }

    @Test
    void isAsQuietWhereTheLogIsWatched() throws IOException {
        Path log = sheet("voice-coil");
        List<String> live = unasked(log);
        List<String> watched = again(new WatchCommand(), "--from", log.toString());
        assertEquals(live.subList(1, live.size()), watched.subList(1, watched.size()));
    }

    @Test
    void isAsQuietWhereTheLogWasCutInTheMiddle() throws IOException {
        Path log = sheet("voice-coil");
        List<String> live = unasked(log);
        byte[] whole = Files.readAllBytes(log);
        Files.write(log, Arrays.copyOf(whole, whole.length / 2));
        List<String> cut = again(new ReplayCommand(), log.toString());
        // The last two tell that the log was cut and that it ended.
        List<String> told = cut.subList(0, cut.size() - 2);
        assertTrue(told.size() > live.size() / 3, told.size() + " of " + live.size());
        assertEquals(live.subList(0, told.size()), told);
    }
}
