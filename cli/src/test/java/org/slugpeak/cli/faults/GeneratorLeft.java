package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.bridge.testkit.SimulatedGenerator;
import org.slugpeak.bridge.testkit.TcpBench;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Told to stop at a random moment of a job that sets a generator: whatever was switched on is off afterwards. */
final class GeneratorLeft implements Trial {

    private static final List<String> SIGNALS = List.of("INT", "TERM", "HUP");
    private static final int LATEST_MILLIS = 6000;

    @Override
    public String name() {
        return "generator-left";
    }

    @Override
    public int count() {
        return 100;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        SimulatedGenerator simulated = new SimulatedGenerator(0.1, random.nextLong());
        ScpiResponder generator = ScpiResponder.of(simulated.scpi());
        try (TcpBench bench = TcpBench.of(generator)) {
            String[] command = command(random, "tcp:127.0.0.1:" + bench.port());
            try (PackagedTool tool = PackagedTool.start(folder, command)) {
                tool.process().waitFor(random.nextInt(LATEST_MILLIS), TimeUnit.MILLISECONDS);
                tool.signal(SIGNALS.get(random.nextInt(SIGNALS.size())));
                Result result = tool.finish();
                Trial.require(
                        List.of(0, 1, 129, 130, 143).contains(result.exitCode()), "ended with " + result.exitCode());
                Trial.require(!result.errors().contains("\tat "), result.errors());
            }
            boolean touched = generator.messages().stream().anyMatch(each -> each.startsWith("OUTPut O"));
            Trial.require(
                    !touched || !simulated.radiates().on(),
                    "the generator still radiates: " + String.join(" ", command));
        }
        return "";
    }

    private static String[] command(SplittableRandom random, String generator) {
        List<List<String>> commands = List.of(
                List.of("check", "--generator", generator),
                List.of("curve", "--from", "sim:aligned", "--span", "446..464", "--generator", generator),
                List.of("align", "tarnfield-54a", "--from", "sim:plan", "--view", "lines", "--generator", generator));
        return commands.get(random.nextInt(commands.size())).toArray(String[]::new);
    }
}
