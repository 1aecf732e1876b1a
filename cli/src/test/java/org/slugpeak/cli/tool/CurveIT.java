package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** The packaged tool before a simulated set, its generator at the other end of a pseudo-terminal. */
@EnabledOnOs(OS.LINUX)
final class CurveIT {

    @TempDir
    private Path folder;

    private volatile String frequency = "455000";

    private ScpiResponder generator() {
        return ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,SG-3,0,0")
                .obeying("SOURce:FREQuency", this::tune)
                .answering("SOURce:FREQuency?", () -> frequency));
    }

    private Optional<String> tune(String argument) {
        frequency = argument;
        return Optional.empty();
    }

    @Test
    void aGeneratorThatGoesInTheMiddleLeavesEveryPointThatWasTaken() throws IOException, InterruptedException {
        Path log = folder.resolve("curve.jsonl");
        ScpiResponder generator = generator();
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(generator);
            Result result;
            try (PackagedTool tool = PackagedTool.start(
                    folder,
                    "curve",
                    "--from",
                    "sim:aligned",
                    "--speed",
                    "20",
                    "--generator",
                    port.path(),
                    "--span",
                    "446..464",
                    "--log",
                    log.toString())) {
                generator.awaitMessage("SOURce:FREQuency 452000");
                port.unplug();
                result = tool.finish();
            }
            assertEquals(1, result.exitCode(), result.errors());
            List<String> said = result.errors().lines().toList();
            String last = said.get(said.size() - 1);
            assertTrue(last.contains("plug it in again"), result.errors());
            assertTrue(last.contains(port.path()), result.errors());
        }
        List<String> records = Files.readAllLines(log);
        long points = records.stream()
                .filter(line -> line.contains("\"topic\":\"curve-point\""))
                .count();
        assertTrue(points >= 6, points + " points are in the log");
        assertTrue(records.get(records.size() - 1).contains("\"type\":\"end\""), "closed properly");
        Result again = PackagedTool.run(folder, "curve", "--points", log.toString());
        assertEquals(0, again.exitCode(), "the points can be had from the log: " + again.errors());
    }
}
