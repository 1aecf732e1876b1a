package org.slugpeak.cli.faults;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.cli.tool.PackagedTool;

/** Killed at a random moment while readings come through a pipe, and are shown as JSON or in lines: what it had shown is in the log. */
final class KillOverPipe implements Trial {

    @Override
    public String name() {
        return "kill-over-pipe";
    }

    @Override
    public int count() {
        return 200;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Path log = folder.resolve("log.jsonl");
        int until = random.nextInt(2000);
        List<String> shown = random.nextBoolean() ? List.of("--json") : List.of("--view", "lines");
        List<String> command =
                new ArrayList<>(List.of("watch", "--from", "-", "--rate", "50", "--log", log.toString()));
        command.addAll(shown);
        try (PackagedTool tool = PackagedTool.start(folder, command.toArray(String[]::new))) {
            Counting counting = Counting.of(tool);
            Thread feeder = new Thread(() -> feed(tool, random.split()));
            feeder.setDaemon(true);
            feeder.start();
            while (counting.soFar() < until && tool.process().isAlive()) {
                Thread.onSpinWait();
            }
            tool.signal("KILL");
            tool.process().waitFor();
            KeptLog.read(log).requireAll(counting.last());
        }
        return "";
    }

    private static void feed(PackagedTool tool, SplittableRandom random) {
        try {
            for (int next = 1; ; ) {
                StringBuilder some = new StringBuilder();
                for (int i = random.nextInt(200); i >= 0; i--) {
                    some.append(next++).append('\n');
                }
                tool.send(some.toString());
            }
        } catch (IOException killed) {
            return;
        }
    }
}
