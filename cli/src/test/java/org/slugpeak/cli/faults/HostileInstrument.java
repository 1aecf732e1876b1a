package org.slugpeak.cli.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/**
 * Random and mutated bytes from an instrument on the network, or on USB with a pseudo-terminal in the place of the device: the
 * packaged tool ends by itself with one line, or when it is told to, with its log closed, and never with a trace.
 */
final class HostileInstrument implements Trial {

    private static final int LATEST_MILLIS = 5000;
    private static final int MOST_LINES = 30;

    private final String carrier;

    private HostileInstrument(String carrier) {
        this.carrier = carrier;
    }

    static List<Trial> all() {
        return List.of(new HostileInstrument("over-tcp"), new HostileInstrument("over-usbtmc"));
    }

    @Override
    public String name() {
        return "bytes-" + carrier;
    }

    @Override
    public int count() {
        return 60;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Babbler babbler = new Babbler(random.split());
        if (carrier.equals("over-tcp")) {
            try (TcpBench bench = TcpBench.of(babbler)) {
                listen("tcp:127.0.0.1:" + bench.port(), random, folder);
            }
        } else {
            try (BenchPort port = BenchPort.in(folder)) {
                port.plug(babbler);
                Path device = Files.createSymbolicLink(folder.resolve("usbtmc0"), Path.of(port.path()));
                listen(device.toString(), random, folder);
            }
        }
        return "";
    }

    private static void listen(String address, SplittableRandom random, Path folder) throws Exception {
        Path log = folder.resolve("log.jsonl");
        try (PackagedTool tool =
                PackagedTool.start(folder, "watch", "--from", address, "--json", "--log", log.toString())) {
            if (!tool.process().waitFor(1 + random.nextInt(LATEST_MILLIS), TimeUnit.MILLISECONDS)) {
                tool.signal("TERM");
            }
            Result result = tool.finish();
            // 143: told before the program had begun.
            Trial.require(List.of(1, 130, 143).contains(result.exitCode()), "ended with " + result.exitCode());
            Trial.require(!result.errors().contains("\tat "), result.errors());
            Trial.require(result.errors().lines().count() <= MOST_LINES, "too many lines: " + result.errors());
        }
        boolean begun = Files.exists(log) && Files.size(log) > 0;
        Trial.require(!begun || KeptLog.read(log).closed(), "has not closed its log");
    }
}
