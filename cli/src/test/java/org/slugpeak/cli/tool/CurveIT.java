package org.slugpeak.cli.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** The packaged tool before a simulated set, its generator at the other end of a pseudo-terminal. */
@EnabledOnOs(OS.LINUX)
final class CurveIT {

    @TempDir
    private Path folder;

    @Test
    void aGeneratorThatGoesInTheMiddleIsWaitedForAndLeftWithItsOutputOff() throws IOException, InterruptedException {
        Path log = folder.resolve("curve.jsonl");
        SimulatedGenerator simulated = new SimulatedGenerator(0, 1);
        ScpiResponder generator = ScpiResponder.of(simulated.scpi());
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
                while (!Files.readString(log).contains("\"topic\":\"generator-gone\"")) {
                    Thread.onSpinWait(); // one that is back before anybody looked has not gone
                }
                simulated.powerFails();
                port.plug(generator);
                result = tool.finish();
            }
            assertEquals(0, result.exitCode(), result.errors());
            assertTrue(result.errors().contains("plug it in again"), result.errors());
            assertTrue(result.errors().contains(port.path()), result.errors());
        }
        assertFalse(simulated.radiates().on());
        List<String> records = Files.readAllLines(log);
        long points = records.stream()
                .filter(line -> line.contains("\"topic\":\"curve-point\""))
                .count();
        assertEquals(19, points);
        assertTrue(records.get(records.size() - 1).contains("\"type\":\"end\""), "closed properly");
        Result again = PackagedTool.run(folder, "curve", "--points", log.toString());
        assertEquals(0, again.exitCode(), "the points can be had from the log: " + again.errors());
    }

    @Test
    void toldToStopItLeavesTheGeneratorWithItsOutputOff() throws IOException, InterruptedException {
        SimulatedGenerator simulated = new SimulatedGenerator(0, 1);
        ScpiResponder generator = ScpiResponder.of(simulated.scpi());
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(generator);
            try (PackagedTool tool = PackagedTool.start(
                    folder, "curve", "--from", "sim:aligned", "--generator", port.path(), "--span", "446..464")) {
                generator.awaitMessage("OUTPut ON");
                tool.signal("TERM");
                assertEquals(130, tool.finish().exitCode());
            }
        }
        assertFalse(simulated.radiates().on());
    }
}
