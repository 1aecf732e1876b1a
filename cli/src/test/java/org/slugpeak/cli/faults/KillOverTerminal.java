package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.cli.tool.PackagedTool;

/** The same while a board sends readings over a serial line. */
final class KillOverTerminal implements Trial {

    @Override
    public String name() {
        return "kill-over-terminal";
    }

    @Override
    public int count() {
        return 200;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Path log = folder.resolve("log.jsonl");
        int readings = 20 + random.nextInt(400);
        LineAdc board = LineAdc.silent();
        try (BenchPort port = BenchPort.in(folder)) {
            port.plug(board);
            try (PackagedTool tool = PackagedTool.start(
                    folder,
                    "watch",
                    "--from",
                    port.path(),
                    "--meter",
                    "generic-line",
                    "--json",
                    "--log",
                    log.toString())) {
                Counting counting = Counting.of(tool);
                board.awaitOpened();
                for (int i = 1; i <= readings; i++) {
                    board.play(List.of(Integer.toString(i)), 2);
                }
                tool.signal("KILL");
                tool.process().waitFor();
                KeptLog.read(log).requireAll(counting.last());
            }
        }
        return "";
    }
}
