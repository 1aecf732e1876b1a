package org.slugpeak.cli.faults;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** A damaged file given to the packaged tool as a whole: code 0 or 1, no trace, nothing that a terminal obeys. */
final class MutatedFile implements Trial {

    private static final List<String> COMMANDS = List.of(
            "watch --from x.csv",
            "replay x.csv --plain",
            "replay x.jsonl",
            "replay x.jsonl --json",
            "report x.jsonl --markdown",
            "report x.jsonl --csv",
            "align x.toml --from sim:plan --only nothing --chassis isolated",
            "watch --from /dev/ttyNONE --meter x.toml",
            "curve --points x.csv",
            "replay x.wav");

    @Override
    public String name() {
        return "mutated-file";
    }

    @Override
    public int count() {
        return 300;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        String command = COMMANDS.get(random.nextInt(COMMANDS.size()));
        String file = command.replaceAll(".*(x\\.\\w+).*", "$1");
        Files.write(folder.resolve(file), Mutation.of(seed(file), random));
        Result result = PackagedTool.shell(folder, "$SLUGPEAK " + command);
        String all = String.join("\n", result.output()) + result.errors();
        Trial.require(result.exitCode() <= 2, command + " ended with " + result.exitCode());
        Trial.require(!all.contains("\tat ") && !all.contains("a fault in slugpeak"), command + ": " + all);
        Trial.require(
                all.chars().noneMatch(each -> each != '\n' && each != '\t' && Character.isISOControl(each)),
                command + " shows a control character");
        return "";
    }

    private static byte[] seed(String file) throws Exception {
        Path shared = Path.of(System.getProperty("slugpeak.shared"));
        return switch (file) {
            case "x.toml" -> Files.readAllBytes(shared.resolve("plans/template.toml"));
            case "x.csv" -> Files.readAllBytes(shared.resolve("recordings/if-slug.csv"));
            default ->
                ("{\"type\":\"session\",\"version\":1,\"startedAt\":\"2026-01-05T10:00:00Z\",\"source\":\"sim\","
                                + "\"quantity\":\"q\",\"unit\":\"V\",\"seek\":\"peak\",\"tool\":\"t\"}\n"
                                + "{\"type\":\"reading\",\"t\":0,\"value\":1,\"condition\":\"ok\",\"trend\":\"steady\"}\n"
                                + "{\"type\":\"mark\",\"t\":0,\"text\":\"x\"}\n")
                        .getBytes(StandardCharsets.UTF_8);
        };
    }
}
