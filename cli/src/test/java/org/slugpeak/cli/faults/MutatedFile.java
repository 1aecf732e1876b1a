package org.slugpeak.cli.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/** A damaged file given to the packaged tool as a whole: code 0 or 1, no trace, nothing that a terminal obeys. */
final class MutatedFile implements Trial {

    /** The damaged file is the one whose name stands here; it is found by it. */
    private static final List<String> COMMANDS = List.of(
            "watch --from readings.csv",
            "replay readings.csv --plain",
            "replay session.jsonl",
            "replay session.jsonl --json",
            "report session.jsonl --markdown",
            "report session.jsonl --csv",
            "align plan.toml --from sim:plan --only nothing --chassis isolated",
            "align plan.toml --show",
            "watch --from /dev/ttyNONE --meter instrument.toml",
            "check --generator /dev/ttyNONE --generator-kind generator.toml",
            "curve --points points.csv",
            "replay sound.wav");

    private static final Pattern FILE = Pattern.compile("\\w+\\.(?:csv|jsonl|toml|wav)");

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
        String file = FILE.matcher(command).results().findFirst().orElseThrow().group();
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
            case "plan.toml" -> Files.readAllBytes(shared.resolve("plans/template.toml"));
            case "instrument.toml" -> Files.readAllBytes(shared.resolve("instruments/template.toml"));
            case "generator.toml" -> Files.readAllBytes(shared.resolve("generators/template.toml"));
            case "readings.csv" -> Files.readAllBytes(shared.resolve("recordings/if-slug.csv"));
            case "points.csv" -> Seeds.points();
            case "sound.wav" -> Seeds.wav();
            default -> Seeds.log();
        };
    }
}
