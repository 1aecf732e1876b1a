package org.slugpeak.cli.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.slugpeak.bridge.testkit.BenchPort;
import org.slugpeak.bridge.testkit.LineAdc;
import org.slugpeak.cli.tool.PackagedTool;

/**
 * The plug is pulled and put back ten times in one session, two hundred times in all: neither descriptors nor threads nor memory become
 * more.
 */
final class Replug implements Trial {

    private static final int TIMES = 10;
    private static final int MOST_READINGS_BETWEEN = 30;

    /** What a session may open for good after the first replug, such as the program's own log file. */
    private static final long SLACK = 2;

    /** The heap, whose limit is 96 MB, is filled before it is cleared: what leaked at each plug would show beside that. */
    private static final long SLACK_KILOBYTES = 40_000;

    @Override
    public String name() {
        return "replug-ten-times";
    }

    @Override
    public int count() {
        return 20;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        try (BenchPort port = BenchPort.in(folder)) {
            plug(port);
            try (PackagedTool tool =
                    PackagedTool.start(folder, "watch", "--from", port.path(), "--meter", "generic-line", "--json")) {
                return replugged(port, tool, random);
            }
        }
    }

    private static String replugged(BenchPort port, PackagedTool tool, SplittableRandom random) throws Exception {
        tool.lineWith("\"type\":\"reading\"");
        long descriptors = 0;
        long threads = 0;
        long kilobytes = 0;
        for (int i = 0; i <= TIMES; i++) {
            for (int more = random.nextInt(MOST_READINGS_BETWEEN); more > 0; more--) {
                tool.lineWith("\"type\":\"reading\"");
            }
            port.unplug();
            tool.lineWith("\"state\":\"lost\"");
            plug(port);
            tool.lineWith("\"state\":\"resumed\"");
            if (i == 0) {
                descriptors = count(tool, "fd");
                threads = count(tool, "task");
                kilobytes = Memory.kilobytes(tool.process().pid());
            }
        }
        Trial.require(
                count(tool, "fd") <= descriptors + SLACK, descriptors + " descriptors became " + count(tool, "fd"));
        Trial.require(count(tool, "task") <= threads + SLACK, threads + " threads became " + count(tool, "task"));
        long last = Memory.kilobytes(tool.process().pid());
        Trial.require(last <= kilobytes + SLACK_KILOBYTES, kilobytes + " kB became " + last);
        return String.format(
                Locale.ROOT,
                "%d descriptors, %d threads, %d MB more after the last plug",
                count(tool, "fd"),
                count(tool, "task"),
                (last - kilobytes) / 1000);
    }

    /** A board that talks by itself, ten readings a second apart enough for any machine. */
    private static void plug(BenchPort port) {
        LineAdc board = LineAdc.silent();
        port.plug(board);
        Thread talk = new Thread(() -> {
            board.awaitOpened();
            for (int i = 0; i < 3000; i++) {
                board.play(List.of("0.5"), 10);
            }
        });
        talk.setDaemon(true);
        talk.start();
    }

    private static long count(PackagedTool tool, String what) throws IOException {
        try (Stream<Path> entries =
                Files.list(Path.of("/proc", Long.toString(tool.process().pid()), what))) {
            return entries.count();
        }
    }
}
