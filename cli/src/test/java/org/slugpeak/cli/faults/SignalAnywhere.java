package org.slugpeak.cli.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.ScpiMeter;
import org.slugpeak.bridge.testkit.ScpiResponder;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Told to stop at a random moment of a random command: it ends, closes its log and gives the meter its keys back. */
final class SignalAnywhere implements Trial {

    private static final List<String> SIGNALS = List.of("INT", "TERM", "HUP");
    private static final int LATEST_MILLIS = 3000;

    @Override
    public String name() {
        return "signal-anywhere";
    }

    @Override
    public int count() {
        return 300;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Path log = folder.resolve("log.jsonl");
        ScpiResponder meter = random.nextBoolean()
                ? ScpiResponder.reading("+1.25000000E+00")
                : ScpiResponder.of(ScpiMeter.identifiedAs("EMBER FELL INSTRUMENTS,BM-450,0,1.07"));
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(meter);
            String[] command = command(random, port.path(), log.toString());
            try (PackagedTool tool = PackagedTool.start(folder, command)) {
                tool.process().waitFor(random.nextInt(LATEST_MILLIS), TimeUnit.MILLISECONDS);
                tool.signal(SIGNALS.get(random.nextInt(SIGNALS.size())));
                check(tool.finish(), String.join(" ", command), log);
            }
            List<String> messages = meter.messages();
            Trial.require(
                    messages.lastIndexOf("SYSTem:LOCal") >= messages.lastIndexOf("SYSTem:REMote"),
                    "the meter stays in remote: " + String.join(" ", command));
        }
        return "";
    }

    private static String[] command(SplittableRandom random, String port, String log) {
        List<List<String>> commands = List.of(
                List.of("watch", "--from", port, "--json", "--log", log),
                List.of("watch", "--from", port, "--view", "lines", "--log", log),
                List.of("check", "--from", port),
                List.of("curve", "--from", port, "--span", "450..460", "--log", log),
                List.of("watch", "--from", "-", "--json", "--log", log),
                List.of("demo", "--cue", "off", "--view", "none", "--log", log));
        return commands.get(random.nextInt(commands.size())).toArray(String[]::new);
    }

    private static void check(Result result, String command, Path log) throws Exception {
        if (isBeforeAnyProgram(result)) {
            Trial.require(!Files.exists(log), command + " has begun a log");
            return;
        }
        // Before the program has begun, the virtual machine ends by the signal itself: 128 and its number.
        boolean early = List.of(129, 130, 143).contains(result.exitCode());
        Trial.require(early, command + " ended with " + result.exitCode() + ": " + result.errors() + result.output());
        Trial.require(!result.errors().contains("\tat "), result.errors());
        Trial.require(!result.errors().contains("did not let go"), command + ": " + result.errors());
        boolean begun = Files.exists(log) && Files.size(log) > 0;
        Trial.require(!begun || KeptLog.read(log).closed(), command + " has not closed its log");
    }

    /**
     * Java 17 told to stop between the second and third phase of its own start ends with 1 and "InternalError: Bad level: 2" on standard
     * output (seen once in some hundred such moments). No program has begun by then, and none can prevent it.
     */
    private static boolean isBeforeAnyProgram(Result result) {
        return result.exitCode() == 1
                && result.errors().isEmpty()
                && result.output().contains("Error occurred during initialization of VM");
    }
}
