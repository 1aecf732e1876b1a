package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How {@code align} ends. */
class AlignCommandTest {

    @TempDir
    private Path folder;

    private CommandRun align(String stage) throws IOException {
        Path readings = Files.writeString(folder.resolve("readings.csv"), "0.0,0.1\n0.1,0.1\n0.2,0.1\n");
        String bench = "--chassis transformer --isolated yes --earthed no --blocking yes --view none --cue off";
        List<String> args = new ArrayList<>(List.of("tarnfield-54a", "--only", stage, "--from", readings.toString()));
        args.addAll(List.of(bench.split(" ")));
        return CommandRun.of(new AlignCommand(), args.toArray(String[]::new));
    }

    @Test
    void readingsThatEndTooEarlyAreNoAlignmentAndTheStepIsNamed() throws IOException {
        CommandRun run = align("AM IF");
        assertEquals(1, run.exitCode());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(
                run.err().startsWith("slugpeak align: ended before the plan was through: 'T2 top' of stage 'AM IF'"),
                run.err());
        assertTrue(run.err().contains("; 0 adjustments; no record was kept: give --log FILE"), run.err());
    }
}
