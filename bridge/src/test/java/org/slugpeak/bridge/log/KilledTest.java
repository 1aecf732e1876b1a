package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class KilledTest {

    private static final int ACKNOWLEDGED = 2_000;

    @TempDir
    Path folder;

    @Test
    @Timeout(120)
    void aProgramThatIsKilledLosesNothingThatItHasAcknowledged() throws Exception {
        Path file = folder.resolve("bench.jsonl");
        Process victim = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        LogVictim.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int acknowledged = -1;
        try (BufferedReader answers = victim.inputReader()) {
            while (acknowledged < ACKNOWLEDGED) {
                acknowledged = Integer.parseInt(answers.readLine());
            }
            victim.destroyForcibly().waitFor();
        }
        List<Long> times = new ArrayList<>();
        try (LogReader reader = LogReader.open(file, (line, problem) -> {
            throw new AssertionError(line + ": " + problem);
        })) {
            for (Optional<LogEntry> next = reader.next(); next.isPresent(); next = reader.next()) {
                times.add(next.get().record().tNanos());
            }
            assertTrue(reader.ending() instanceof LogEnding.Truncated);
        }
        assertTrue(times.size() > acknowledged, times.size() + " read back, " + acknowledged + " acknowledged");
        for (int i = 0; i < times.size(); i++) {
            assertEquals(i, times.get(i));
        }
    }
}
