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

/** While a curve is measured nothing is turned but the generator: a replay hears no peak in it, and every point as it was told. */
class ReplayedCurveTest {

    @TempDir
    private Path folder;

    private Path curve(String... more) {
        Path log = folder.resolve("live.jsonl");
        String[] options = "--from sim:aligned --span 440..470 --step 3 --speed 1000 --view none".split(" ", -1);
        String[] all = Stream.of(options, more, new String[] {"--log", log.toString()})
                .flatMap(Arrays::stream)
                .toArray(String[]::new);
        CommandRun run = CommandRun.of(new CurveCommand(), all);
        assertEquals(0, run.exitCode(), run.err());
        return log;
    }

    private List<String> again(Object command, String... source) throws IOException {
        Path copy = folder.resolve("again.jsonl");
        String[] options = Stream.of(source, new String[] {"--view", "none", "--log", copy.toString()})
                .flatMap(Arrays::stream)
                .toArray(String[]::new);
        CommandRun run = CommandRun.of(command, options);
        assertEquals(0, run.exitCode(), run.err());
        return Files.readAllLines(copy);
    }

    /** Nobody is asked again to set the generator. */
    private static List<String> unasked(Path log) throws IOException {
        return Files.readAllLines(log).stream()
                .filter(line -> !line.contains("\"topic\":\"set-generator\""))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--seed=1", "--no-rest", "--law"})
    void givesLineForLineWhatWasRecordedLive(String how) throws IOException {
        Path log = curve(how);
        List<String> live = unasked(log);
        assertTrue(
                live.stream().filter(line -> line.contains("\"curve-point\"")).count() == 11, "eleven points");
        assertEquals(live, again(new ReplayCommand(), log.toString()));
    }

    @Test
    void isAsQuietWhereTheLogIsWatched() throws IOException {
        Path log = curve();
        List<String> live = unasked(log);
        List<String> watched = again(new WatchCommand(), "--from", log.toString());
        assertEquals(live.subList(1, live.size()), watched.subList(1, watched.size()));
    }

    @Test
    void isTheSameCurveInItsPoints() throws IOException {
        Path log = curve();
        Path copy = folder.resolve("again.jsonl");
        again(new ReplayCommand(), log.toString());
        CommandRun live = CommandRun.of(new CurveCommand(), "--points", log.toString());
        CommandRun played = CommandRun.of(new CurveCommand(), "--points", copy.toString());
        assertEquals(live.out(), played.out());
        assertTrue(live.out().contains("-3 dB"), live.out());
    }
}
