package org.slugpeak.bridge.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.SplittableRandom;
import org.slugpeak.bridge.file.CsvOptions;
import org.slugpeak.bridge.file.CsvSource;
import org.slugpeak.bridge.log.JsonLines;
import org.slugpeak.bridge.log.LogSource;
import org.slugpeak.bridge.log.SessionLog;
import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionStart;

/**
 * What one row costs on its way from a CSV file to JSON lines and into a session log. Every figure is the best of several runs
 * over a file of a million rows ({@code seconds,volts}: a noisy resonance that is swept up and down), after a run to warm up;
 * times are processor time of the measuring thread, so that a busy machine does not spoil them.
 */
public final class CsvToJson {

    private static final int ROWS = 1_000_000;
    private static final int RUNS = 5;

    private final Path folder;
    private final PrintStream out;

    private CsvToJson(Path folder, PrintStream out) {
        this.folder = folder;
        this.out = out;
    }

    /**
     * Measures and prints.
     *
     * @param arguments none
     * @throws Exception if the files cannot be made or read
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("slugpeak-bench");
        try {
            new CsvToJson(folder, System.out).run();
        } finally {
            for (String name : new String[] {"sweep.csv", "session.jsonl"}) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.delete(folder);
        }
    }

    private void run() throws Exception {
        Path csv = folder.resolve("sweep.csv");
        Path log = folder.resolve("session.jsonl");
        write(csv);
        measure("CSV to readings", () -> read(csv, new Counter()));
        measure("CSV to records", () -> read(csv, analysis(record -> {})));
        measure("CSV to JSON lines", () -> {
            try (JsonLines json = new JsonLines(OutputStream.nullOutputStream(), record -> "")) {
                json.take(start());
                read(csv, analysis(json));
                if (json.isBroken()) {
                    throw new IllegalStateException("the lines went nowhere at all");
                }
            }
        });
        measure("CSV to session log", () -> record(csv, log));
        measure("session log to records", () -> replay(log));
    }

    private void measure(String what, Work work) throws Exception {
        long least = Long.MAX_VALUE;
        for (int i = 0; i <= RUNS; i++) {
            long before = processorNanos();
            work.run();
            least = i == 0 ? least : Math.min(least, processorNanos() - before);
        }
        out.printf(Locale.ROOT, "%-24s %6.0f ns a row%n", what, (double) least / ROWS);
    }

    private static void record(Path csv, Path file) throws IOException, BridgeException {
        Files.deleteIfExists(file);
        try (SessionLog log = SessionLog.create(file, record -> "", CsvToJson::refuse)) {
            log.take(start());
            Analysis analysis = new Analysis(start().settings(), log);
            read(csv, new Feeder(analysis));
            analysis.end(EndReason.Known.DONE);
        }
    }

    private static void replay(Path log) throws BridgeException {
        try (LogSource source = LogSource.open(log)) {
            drain(source, analysis(record -> {}));
        }
    }

    private static void read(Path csv, SourceListener listener) throws BridgeException {
        try (CsvSource source = CsvSource.open(csv, CsvOptions.defaults())) {
            drain(source, listener);
        }
    }

    private static void drain(ReadingSource source, SourceListener listener) throws BridgeException {
        while (source.poll(0, listener) != Progress.ENDED) {}
    }

    private static Feeder analysis(RecordSink sink) {
        return new Feeder(new Analysis(PeakSettings.defaults(), sink));
    }

    private static void refuse(String warning) {
        throw new IllegalStateException(warning);
    }

    private static SessionStart start() {
        return new SessionStart(
                1, Instant.EPOCH, "sweep.csv", Measurand.DC_VOLTS, PeakSettings.defaults(), "benchmark");
    }

    private static void write(Path csv) throws IOException {
        SplittableRandom random = new SplittableRandom(1);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(csv))) {
            out.write("seconds,volts\n".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < ROWS; i++) {
                double detuning = 3 * Math.sin(i / 2000.0);
                double volts = 4 / Math.sqrt(1 + detuning * detuning) + 0.005 * (random.nextDouble() - 0.5);
                out.write(String.format(Locale.ROOT, "%.2f,%.5f%n", i / 50.0, volts)
                        .getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private interface Work {
        void run() throws Exception;
    }

    private static final class Feeder extends AnalysisListener {

        Feeder(Analysis analysis) {
            super(analysis);
        }

        @Override
        public void garbled(String where, String problem) {
            throw new IllegalStateException(where + ": " + problem);
        }
    }

    private static final class Counter implements SourceListener {

        private double sum;

        @Override
        public void reading(Reading reading) {
            sum += reading.value();
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {
            sum++;
        }

        @Override
        public void garbled(String where, String problem) {
            throw new IllegalStateException(where + ": " + problem + " after a sum of " + sum);
        }
    }
}
