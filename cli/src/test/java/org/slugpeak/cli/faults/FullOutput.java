package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Standard output is full, or its reader goes away at a random moment: said once, and the code is 1. */
final class FullOutput implements Trial {

    private static final List<String> COMMANDS = List.of(
            "watch --from many.csv",
            "watch --from many.csv --json",
            "watch --from many.csv --plain --json",
            "replay many.csv",
            "--help",
            "superhet tune --if 455 --dial 600");

    @Override
    public String name() {
        return "full-output";
    }

    @Override
    public int count() {
        return 60;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        String command = COMMANDS.get(random.nextInt(COMMANDS.size()));
        boolean gone = random.nextBoolean() && command.contains("many");
        String out = gone
                ? "2>said; echo $? >code; } | head -c " + random.nextInt(5000)
                : ">/dev/full 2>said; echo $? >code; }";
        Result result = PackagedTool.shell(
                folder,
                "seq 1 5000 >many.csv; { $SLUGPEAK " + command + " " + out + " >/dev/null; cat code said; wc -l <said");
        String all = String.join("\n", result.output());
        Trial.require(all.startsWith("1\n"), command + " " + all);
        Trial.require(
                all.contains("standard output takes nothing any more") && all.endsWith("\n1"), command + " " + all);
        return "";
    }
}
