package org.slugpeak.cli.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/**
 * A disk of random size that fills up, or cannot be written: the code is 1, what is in the log reads, and an older report is as it
 * was. Needs the right to mount.
 */
final class FullDisk implements Trial {

    private static final String NOT_TRIED = "NOT TRIED: nothing can be mounted here";

    @Override
    public String name() {
        return "full-disk";
    }

    @Override
    public int count() {
        return 60;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        int kilobytes = 4 * (1 + random.nextInt(40));
        if (run("mount", "-t", "tmpfs", "-o", "size=" + kilobytes + "k", "tmpfs", disk.toString()) != 0) {
            return NOT_TRIED;
        }
        try {
            return random.nextInt(4) == 0 ? readOnly(disk, folder) : full(disk, folder);
        } finally {
            run("umount", disk.toString());
        }
    }

    private static String full(Path disk, Path folder) throws Exception {
        Path log = disk.resolve("log.jsonl");
        Result result = PackagedTool.shell(
                folder, "seq 1 4000 | $SLUGPEAK watch --from - --rate 50 --view none --log disk/log.jsonl");
        Trial.require(result.exitCode() == 1, "the code is " + result.exitCode());
        Trial.require(result.errors().contains("cannot write to "), result.errors());
        List<Double> values = KeptLog.read(log).values();
        Trial.require(
                values.equals(DoubleStream.iterate(1, each -> each + 1)
                        .limit(values.size())
                        .boxed()
                        .toList()),
                "not the first readings: " + values);
        return "";
    }

    private static String readOnly(Path disk, Path folder) throws Exception {
        Path old = Files.writeString(disk.resolve("page.html"), "");
        run("mount", "-o", "remount,ro", disk.toString());
        Result result = PackagedTool.shell(
                folder,
                "$SLUGPEAK demo --speed 1000 --cue off --view none --log log.jsonl >/dev/null;"
                        + " $SLUGPEAK report log.jsonl --out disk/page.html");
        Trial.require(result.exitCode() == 1, "the code is " + result.exitCode());
        Trial.require(result.errors().contains("Read-only"), result.errors());
        Trial.require(Files.size(old) == 0, "it was written");
        return "";
    }

    private static int run(String... command) throws Exception {
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }
}
