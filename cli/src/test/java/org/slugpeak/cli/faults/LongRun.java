package org.slugpeak.cli.faults;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** A day at fifty readings a second, as fast as the machine can: memory stays flat, all is kept, and the report is made. */
final class LongRun implements Trial {

    private static final int PER_SECOND = 50;
    private static final int DAY_SECONDS = 86_400;
    private static final int SHORT_SECONDS = 3_600;
    private static final long MOST_KILOBYTES = 200_000;

    @Override
    public String name() {
        return "long-run";
    }

    @Override
    public int count() {
        return 1;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        boolean whole = Double.parseDouble(System.getProperty("faults.share", "1.0")) >= 1;
        int rows = PER_SECOND * (whole ? DAY_SECONDS : SHORT_SECONDS);
        Path log = folder.resolve("log.jsonl");
        long most = peakOf(rows, "watch", "--from", "-", "--rate", "50", "--view", "none", "--log", log.toString());
        long kept;
        try (Stream<String> lines = Files.lines(log)) {
            kept = lines.filter(line -> line.startsWith("{\"type\":\"reading\""))
                    .count();
        }
        Trial.require(kept == rows, rows + " readings, " + kept + " kept");
        Trial.require(most < MOST_KILOBYTES, "it took " + most + " kB");
        long report = peakOf(
                0,
                "report",
                log.toString(),
                "--out",
                folder.resolve("page.html").toString());
        Trial.require(Files.readString(folder.resolve("page.html")).contains("</html>"), "no page");
        return String.format(
                Locale.ROOT,
                "%d readings; %d MB while it watched, %d MB for the report",
                rows,
                most / 1000,
                report / 1000);
    }

    private static long peakOf(int rows, String... args) throws Exception {
        String[] command = new String[args.length + 1];
        command[0] = System.getProperty("slugpeak.launcher");
        System.arraycopy(args, 0, command, 1, args.length);
        Process tool = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        Feeding feeding = new Feeding(tool, rows);
        feeding.run();
        Trial.require(tool.waitFor() == 0, String.join(" ", args) + " ended with " + tool.exitValue());
        return feeding.mostKilobytes;
    }

    /** Writes the rows and looks at the memory now and then. */
    private static final class Feeding {

        private static final int BETWEEN_LOOKS = 10_000;

        private final Process tool;
        private final int rows;
        private long mostKilobytes;

        Feeding(Process tool, int rows) {
            this.tool = tool;
            this.rows = rows;
        }

        void run() throws IOException {
            try (Writer out = tool.outputWriter(StandardCharsets.US_ASCII)) {
                for (int i = 0; i < rows; i++) {
                    out.write(String.format(Locale.ROOT, "%.4f%n", 1 + 0.5 * Math.sin(i / 3000.0)));
                    if (i % BETWEEN_LOOKS == 0) {
                        look();
                    }
                }
            }
            while (tool.isAlive()) {
                look();
                Thread.onSpinWait();
            }
        }

        private void look() {
            mostKilobytes = Math.max(mostKilobytes, Memory.kilobytes(tool.pid()));
        }
    }
}
