package org.slugpeak.cli.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** Few files may be open: a line or two, never a trace. With fewer than twenty the virtual machine itself does not start. */
final class FewDescriptors implements Trial {

    private static final List<String> COMMANDS = List.of(
            "ports",
            "watch --from /dev/ttyNONE",
            "demo --speed 1000 --cue off --view none --log log.jsonl",
            "--help",
            "watch --from - --log log.jsonl </dev/null",
            "align am-superhet --if 455 --from sim:plan --only x");

    @Override
    public String name() {
        return "few-descriptors";
    }

    @Override
    public int count() {
        return 60;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        String command = COMMANDS.get(random.nextInt(COMMANDS.size()));
        int limit = 20 + random.nextInt(20);
        Result result = PackagedTool.shell(folder, "ulimit -n " + limit + "; $SLUGPEAK " + command);
        Trial.require(!result.errors().contains("\tat "), limit + " " + command + ": " + result.errors());
        Trial.require(result.errors().lines().count() <= 3, limit + " " + command + ": " + result.errors());
        return "";
    }
}
